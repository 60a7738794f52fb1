namespace FeltNest.Layout;

/// <summary>Gives a layout for a request: the search, or what stands in for it. A study asks for a layout of a width; how it is found is
/// not its business.</summary>
/// <param name="request">What is to be laid.</param>
/// <param name="stop">Ends a search with the best so far.</param>
/// <exception cref="NoAnswerException">The part does not fit.</exception>
internal delegate RollLayout LayoutSource(LayoutRequest request, CancellationToken stop);
