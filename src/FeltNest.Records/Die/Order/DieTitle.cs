namespace FeltNest.Die.Order;

/// <summary>Fields of the title block of ISO 7200:2004; a field that is not given is left blank to be filled in by hand.</summary>
public sealed record DieTitle(
    string? LegalOwner, string? IdentificationNumber, string? DateOfIssue, string? Creator, string? ApprovalPerson, string? Title,
    string? SupplementaryTitle, string? DocumentType,
    string? Revision, string? Department, string? TechnicalReference, string? Status, string? Language)
{
    /// <summary>Most letters of each field, after ISO 7200:2004 (as a help page reproduces its table); null where it sets none. Sheet
    /// numbers are ours to write.</summary>
    public static IReadOnlyList<(string Field, int? Most, bool Mandatory)> Limits { get; } =
    [
        ("legalOwner", null, true), ("identificationNumber", 16, true), ("dateOfIssue", 10, true), ("sheetNumber", 4, true),
        ("approvalPerson", 20, true), ("creator", 20, true),
        ("documentType", 30, true), ("title", 25, true), ("supplementaryTitle", 25, false), ("revision", 2, false),
        ("numberOfSheets", 4, false), ("language", 4, false),
        ("department", 10, false), ("technicalReference", 20, false), ("status", 20, false),
    ];
}
