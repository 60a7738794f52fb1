namespace FeltNest.Layout;

/// <summary>Gives the layouts of a request that are worth a price: the one with least felt first, then the best of other numbers of panels
/// in a repeat.</summary>
/// <param name="request">What is to be laid.</param>
/// <param name="stop">Ends a search with the best so far.</param>
/// <exception cref="NoAnswerException">The part does not fit.</exception>
internal delegate IReadOnlyList<RollLayout> LayoutFrontSource(LayoutRequest request, CancellationToken stop);
