namespace FeltNest.Layout.Polish;

/// <summary>Two places of two parts that are near each other.</summary>
/// <param name="Distance">Signed distance, mm; negative when the corner lies inside the other part.</param>
/// <param name="NormalX">Unit vector from the second part towards the first.</param>
/// <param name="NormalY">Its y.</param>
/// <param name="FirstX">Place on the first part from its own origin, mm.</param>
/// <param name="FirstY">Its y.</param>
/// <param name="SecondX">Place on the second part from its own origin, mm.</param>
/// <param name="SecondY">Its y.</param>
internal readonly record struct Contact(
    double Distance, double NormalX, double NormalY, double FirstX, double FirstY, double SecondX, double SecondY);
