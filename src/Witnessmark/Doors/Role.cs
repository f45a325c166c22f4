using Witnessmark.Bench.Machines;

namespace Witnessmark.Doors;

/// <summary>What somebody may do; whoever may do more may do all that is before it.</summary>
public enum Role
{
    /// <summary>Look at everything, and print it.</summary>
    Reader,

    /// <summary>Write entries, bring photographs, move stock.</summary>
    Technician,

    /// <summary>Change figures, let people and devices in, read the book of the door.</summary>
    Lead,
}

/// <summary>The roles of a shop's people stand in its <c>shop.toml</c>.</summary>
public static class Roles
{
    /// <summary>The role of a name; null for one that the shop does not know.</summary>
    public static Role? RoleOf(this Workshop shop, string name) =>
        shop.Leads.Contains(name) ? Role.Lead
        : shop.People.Contains(name) ? Role.Technician
        : shop.Readers.Contains(name) ? Role.Reader
        : null;

    /// <summary>Everybody who may have a secret.</summary>
    public static IReadOnlyList<string> Everybody(this Workshop shop) => [.. shop.People, .. shop.Readers];

    /// <summary>The word of a role in answers and on the command line.</summary>
    public static string Word(this Role role) =>
        role switch
        {
            Role.Lead => "lead",
            Role.Technician => "technician",
            _ => "reader",
        };
}
