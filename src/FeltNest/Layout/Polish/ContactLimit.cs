namespace FeltNest.Layout.Polish;

/// <summary>What a contact asks of the parameters of a model.</summary>
internal static class ContactLimit
{
    /// <summary>How fast the distance of a contact grows with each parameter.</summary>
    /// <param name="model">The lay.</param>
    /// <param name="pair">The two panels that meet.</param>
    /// <param name="contact">Where they meet.</param>
    /// <param name="factors">Is filled: those of the parameters first, further ones 0.</param>
    internal static void Factors(PoseModel model, PanelPair pair, in Contact contact, double[] factors)
    {
        Array.Clear(factors);
        (double x, double y) = (contact.NormalX, contact.NormalY);
        pair.OffsetX.AddTo(factors, -x);
        pair.OffsetY.AddTo(factors, -y);
        model.Panels[pair.First].Angle.AddTo(factors, (-x * contact.FirstY) + (y * contact.FirstX));
        model.Panels[pair.Second].Angle.AddTo(factors, (x * contact.SecondY) - (y * contact.SecondX));
    }
}
