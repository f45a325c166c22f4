using System.CommandLine;

var root = new RootCommand("Witnessmark: the bench-side tool of a motorcycle workshop technician.");
return root.Parse(args).Invoke();
