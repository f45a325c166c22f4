using System.Runtime.CompilerServices;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Handbook.Tests.Mutants;

/// <summary>
/// Makes every table and constant of the handbook before a mutant is switched on. One test program judges many mutants, but makes its
/// static values once: those of the first mutant would stay for all that follow, and they would fail for its sake.
/// </summary>
internal static class StaticsBeforeMutants
{
    private const int None = -1;

    [ModuleInitializer]
    internal static void Make()
    {
        // Stryker.NET 5.1 keeps the number of the mutant that is switched on in this file.
        if (Environment.GetEnvironmentVariable("STRYKER_MUTANT_FILE") is not { Length: > 0 } file)
            return;
        var mutant = File.ReadAllBytes(file);
        Write(file, BitConverter.GetBytes(None));
        foreach (var type in typeof(Calculations).Assembly.GetTypes().Where(t => !t.ContainsGenericParameters))
            RuntimeHelpers.RunClassConstructor(type.TypeHandle);
        Write(file, mutant);
    }

    private static void Write(string file, byte[] mutant)
    {
        // In place: the file is mapped into the memory of others.
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);
        stream.Write(mutant);
    }
}
