namespace FeltNest.Files.Dxf;

/// <summary>One group of a DXF file: a code that says what the value is.</summary>
/// <param name="Code">Group code.</param>
/// <param name="Text">Value as it stands, blanks around it removed.</param>
/// <param name="Line">Line of the value, from 1.</param>
internal readonly record struct DxfGroup(int Code, string Text, int Line);
