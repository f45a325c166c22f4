using Witnessmark.Ledger;

namespace Witnessmark.Serve;

/// <summary>What the server should not be allowed to do, and others should not be allowed to read.</summary>
public static class ServedRights
{
    /// <summary>What is to be put right, in a sentence each.</summary>
    /// <param name="folder">The data folder.</param>
    /// <param name="privileged">Whether the program runs as the computer's administrator.</param>
    /// <param name="ofGroup">Whether the folder holds nothing but the files that people write.</param>
    public static IEnumerable<string> Risks(string folder, bool privileged, bool ofGroup)
    {
        if (privileged)
            yield return "The server runs as the computer's administrator: a hole in it would be a hole in the computer. Give it a user of its own (docs/service.md).";
        if (!ofGroup && OwnFolder.IsOpenToOthers(folder))
            yield return $"Other users of this computer get into {folder}: take that away from them (chmod go= {folder}).";
    }
}
