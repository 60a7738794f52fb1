using FeltNest.Panel.Trace;

namespace FeltNest.Drawing;

/// <summary>A picture in a rectangle of the sheet.</summary>
/// <param name="Picture">The picture.</param>
/// <param name="At">The rectangle, mm.</param>
internal sealed record PictureMark(ColourPicture Picture, Box At) : Mark;
