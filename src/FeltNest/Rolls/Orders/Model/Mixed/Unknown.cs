using Google.OrTools.LinearSolver;

namespace FeltNest.Rolls.Orders.Model.Mixed;

/// <summary>A variable of the model.</summary>
/// <param name="Variable">What the solver knows it by.</param>
/// <param name="Index">Its place among all.</param>
internal sealed record Unknown(Variable Variable, int Index);
