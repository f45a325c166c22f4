namespace Witnessmark.Serve;

/// <summary>A data folder has one server at a time: it holds a file for as long as it runs, and the system lets go of it whatever ends the server.</summary>
public static class ServedFolder
{
    /// <summary>Name of the file in the data folder.</summary>
    public const string FileName = "served.lock";

    /// <summary>Held until it is disposed.</summary>
    /// <exception cref="IOException">Another program holds it.</exception>
    public static IDisposable Hold(string data)
    {
        try
        {
            return new FileStream(
                Path.Combine(data, FileName),
                FileMode.OpenOrCreate,
                FileAccess.ReadWrite,
                FileShare.None
            );
        }
        catch (IOException held) when (held is not FileNotFoundException and not DirectoryNotFoundException)
        {
            throw new IOException($"{data} is being served: stop that server first. ({held.Message})", held);
        }
    }

    /// <summary>Whether a server holds it now.</summary>
    public static bool IsHeld(string data)
    {
        if (!File.Exists(Path.Combine(data, FileName)))
            return false;
        try
        {
            Hold(data).Dispose();
            return false;
        }
        catch (IOException)
        {
            return true;
        }
    }
}
