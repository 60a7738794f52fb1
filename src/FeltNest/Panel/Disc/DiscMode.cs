namespace FeltNest.Panel.Disc;

/// <summary>One function on the disc: r^k times cos or sin of k theta, alone (harmonic, for the rim) or times (1 - r^2) and a Jacobi
/// polynomial in r^2 (zero on the rim).</summary>
/// <param name="Turns">k.</param>
/// <param name="IsSine">Sine rather than cosine.</param>
/// <param name="Order">Order of the Jacobi polynomial, or -1 for the harmonic alone.</param>
internal readonly record struct DiscMode(int Turns, bool IsSine, int Order)
{
    /// <summary>Whether the function is zero on the rim.</summary>
    public bool IsBubble => Order >= 0;

    /// <summary>Polynomial degree.</summary>
    public int Degree => IsBubble ? Turns + (2 * Order) + 2 : Turns;

    /// <summary>Factor that makes the integral of the squared gradient over the disc 1.</summary>
    /// <remarks>The functions are then orthonormal in that product, which keeps the Hessian's condition free of the degree.</remarks>
    public double Scale
    {
        get
        {
            double whole = Turns == 0 ? 2 * Math.PI : Math.PI;
            if (IsBubble)
            {
                return Math.Sqrt(((2 * Order) + Turns + 2) / (2 * whole)) / (Order + 1);
            }

            if (Turns == 0)
            {
                return 1;
            }

            return Math.Sqrt(1 / (whole * Turns));
        }
    }
}
