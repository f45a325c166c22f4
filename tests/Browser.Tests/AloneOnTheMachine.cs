namespace Witnessmark.Browser.Tests;

/// <summary>Tests that listen in real time or look at how long a page stands still: nothing runs beside them.</summary>
[CollectionDefinition(DisableParallelization = true)]
public sealed class AloneOnTheMachine;
