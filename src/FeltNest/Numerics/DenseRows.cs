using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FeltNest.Numerics;

/// <summary>The few inner loops that all dense work comes down to. They are compiled fully at once: a short run would otherwise spend its
/// whole life in slow code.</summary>
internal static class DenseRows
{
    /// <summary>Scalar product of two rows.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ReadOnlySpan<Vector<double>> left = MemoryMarshal.Cast<double, Vector<double>>(a);
        ReadOnlySpan<Vector<double>> right = MemoryMarshal.Cast<double, Vector<double>>(b[..a.Length]);
        Vector<double> even = Vector<double>.Zero;
        Vector<double> odd = Vector<double>.Zero;
        int i = 0;
        for (; i + 1 < left.Length; i += 2)
        {
            even += left[i] * right[i];
            odd += left[i + 1] * right[i + 1];
        }

        if (i < left.Length)
        {
            even += left[i] * right[i];
        }

        double sum = Vector.Sum(even + odd);
        for (int k = left.Length * Vector<double>.Count; k < a.Length; k++)
        {
            sum += a[k] * b[k];
        }

        return sum;
    }

    /// <summary>Scalar products of one row with the rows of a block, each as long as it, four at a time.</summary>
    public static void Dots(ReadOnlySpan<double> row, ReadOnlySpan<double> block, Span<double> to)
    {
        to.Clear();
        AddDots(row, block, row.Length, to);
    }

    /// <summary>Adds to each place the scalar product of one row with a row of a block whose rows begin <paramref name="stride"/> apart,
    /// four at a time.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    // Long because four sums side by side are one loop that the processor must see whole.
    public static void AddDots(ReadOnlySpan<double> row, ReadOnlySpan<double> block, int stride, Span<double> to)
    {
        int length = row.Length;
        int j = 0;
        ReadOnlySpan<Vector<double>> left = MemoryMarshal.Cast<double, Vector<double>>(row);
        for (; j + 3 < to.Length; j += 4)
        {
            ReadOnlySpan<double> a = block.Slice(j * stride, length);
            ReadOnlySpan<double> b = block.Slice((j + 1) * stride, length);
            ReadOnlySpan<double> c = block.Slice((j + 2) * stride, length);
            ReadOnlySpan<double> d = block.Slice((j + 3) * stride, length);
            ReadOnlySpan<Vector<double>> va = MemoryMarshal.Cast<double, Vector<double>>(a)[..left.Length];
            ReadOnlySpan<Vector<double>> vb = MemoryMarshal.Cast<double, Vector<double>>(b)[..left.Length];
            ReadOnlySpan<Vector<double>> vc = MemoryMarshal.Cast<double, Vector<double>>(c)[..left.Length];
            ReadOnlySpan<Vector<double>> vd = MemoryMarshal.Cast<double, Vector<double>>(d)[..left.Length];
            Vector<double> sa = Vector<double>.Zero;
            Vector<double> sb = Vector<double>.Zero;
            Vector<double> sc = Vector<double>.Zero;
            Vector<double> sd = Vector<double>.Zero;
            for (int i = 0; i < left.Length; i++)
            {
                Vector<double> x = left[i];
                sa += x * va[i];
                sb += x * vb[i];
                sc += x * vc[i];
                sd += x * vd[i];
            }

            double ta = Vector.Sum(sa);
            double tb = Vector.Sum(sb);
            double tc = Vector.Sum(sc);
            double td = Vector.Sum(sd);
            for (int k = left.Length * Vector<double>.Count; k < length; k++)
            {
                ta += row[k] * a[k];
                tb += row[k] * b[k];
                tc += row[k] * c[k];
                td += row[k] * d[k];
            }

            to[j] += ta;
            to[j + 1] += tb;
            to[j + 2] += tc;
            to[j + 3] += td;
        }

        for (; j < to.Length; j++)
        {
            to[j] += Dot(row, block.Slice(j * stride, length));
        }
    }

    /// <summary>Adds the products of two rows, place by place, to another.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void AddProducts(Span<double> to, ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        Span<Vector<double>> target = MemoryMarshal.Cast<double, Vector<double>>(to);
        ReadOnlySpan<Vector<double>> left = MemoryMarshal.Cast<double, Vector<double>>(a[..to.Length]);
        ReadOnlySpan<Vector<double>> right = MemoryMarshal.Cast<double, Vector<double>>(b[..to.Length]);
        for (int i = 0; i < target.Length; i++)
        {
            target[i] += left[i] * right[i];
        }

        for (int k = target.Length * Vector<double>.Count; k < to.Length; k++)
        {
            to[k] += a[k] * b[k];
        }
    }

    /// <summary>Adds a multiple of a row to another.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Add(Span<double> to, double factor, ReadOnlySpan<double> row)
    {
        Span<Vector<double>> target = MemoryMarshal.Cast<double, Vector<double>>(to);
        ReadOnlySpan<Vector<double>> source = MemoryMarshal.Cast<double, Vector<double>>(row[..to.Length]);
        Vector<double> f = new(factor);
        for (int i = 0; i < target.Length; i++)
        {
            target[i] += f * source[i];
        }

        for (int k = target.Length * Vector<double>.Count; k < to.Length; k++)
        {
            to[k] += factor * row[k];
        }
    }
}
