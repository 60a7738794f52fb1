using System.Globalization;
using System.Runtime.CompilerServices;

namespace FeltNest;

/// <summary>Texts whose numbers have a decimal point whatever the language of the machine; long ones may be joined with +.</summary>
internal static class InvariantText
{
    /// <summary>The text of an interpolated string.</summary>
    public static string Invariant(InvariantWords words) => words.ToStringAndClear();

    /// <summary>Takes the pieces of an interpolated string in the invariant culture.</summary>
    [InterpolatedStringHandler]
    public ref struct InvariantWords(int literalLength, int formattedCount)
    {
        private DefaultInterpolatedStringHandler inner = new(literalLength, formattedCount, CultureInfo.InvariantCulture);

        /// <summary>A piece of plain text.</summary>
        public void AppendLiteral(string value) => inner.AppendLiteral(value);

        /// <summary>A value as it prints.</summary>
        public void AppendFormatted<T>(T value) => inner.AppendFormatted(value);

        /// <summary>A value in a format.</summary>
        public void AppendFormatted<T>(T value, string? format) => inner.AppendFormatted(value, format);

        /// <summary>A value in a column.</summary>
        public void AppendFormatted<T>(T value, int alignment) => inner.AppendFormatted(value, alignment);

        /// <summary>A value in a column and a format.</summary>
        public void AppendFormatted<T>(T value, int alignment, string? format) => inner.AppendFormatted(value, alignment, format);

        /// <summary>The whole text; the pieces are given back.</summary>
        public string ToStringAndClear() => inner.ToStringAndClear();
    }
}
