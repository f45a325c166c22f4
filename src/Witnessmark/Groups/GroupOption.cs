using System.CommandLine;

namespace Witnessmark.Groups;

/// <summary><c>--group</c>: the shop in the store of its group, in place of one in a data folder.</summary>
internal sealed class GroupOption() : Option<string?>("--group")
{
    /// <summary>The option.</summary>
    public static GroupOption Create(bool recursive = false) =>
        new()
        {
            Description =
                $"the shop in the store of its group: the file that witnessmark group add wrote; without FILE its text is in {GroupFile.Variable}",
            HelpName = "FILE",
            Arity = ArgumentArity.ZeroOrOne,
            Recursive = recursive,
        };

    /// <summary>The file, or null where the option is not given.</summary>
    /// <exception cref="FormatException">It cannot be read.</exception>
    public GroupFile? Of(ParseResult parsed) =>
        parsed.GetResult(this) is null ? null : GroupFile.Read(parsed.GetValue(this));
}
