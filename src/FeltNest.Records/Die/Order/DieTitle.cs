namespace FeltNest.Die.Order;

/// <summary>Fields of the title block of ISO 7200:2004; a field that is not given is left blank to be filled in by hand.</summary>
public sealed record DieTitle
{
    /// <summary>Legal owner of the document.</summary>
    public string? LegalOwner { get; init; }

    /// <summary>Number of the drawing.</summary>
    public string? IdentificationNumber { get; init; }

    /// <summary>Date of issue, as it is to be printed.</summary>
    public string? DateOfIssue { get; init; }

    /// <summary>Who drew it.</summary>
    public string? Creator { get; init; }

    /// <summary>Who released it.</summary>
    public string? ApprovalPerson { get; init; }

    /// <summary>Title.</summary>
    public string? Title { get; init; }

    /// <summary>Second line of the title, or null.</summary>
    public string? SupplementaryTitle { get; init; }

    /// <summary>Kind of document, or null.</summary>
    public string? DocumentType { get; init; }

    /// <summary>Revision, or null.</summary>
    public string? Revision { get; init; }

    /// <summary>Responsible department, or null.</summary>
    public string? Department { get; init; }

    /// <summary>Whom to ask, or null.</summary>
    public string? TechnicalReference { get; init; }

    /// <summary>Status of the document, or null.</summary>
    public string? Status { get; init; }

    /// <summary>Language of the document, or null.</summary>
    public string? Language { get; init; }

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
