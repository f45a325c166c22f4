using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Witnessmark.Tests.Languages;

/// <summary>A key as the built program asks a catalogue for it.</summary>
/// <param name="Key">The English text with places for its arguments.</param>
/// <param name="Many">That for many, where it is one of a pair.</param>
/// <param name="Context">What is meant, where the English word has several meanings.</param>
/// <param name="Where">The method that says it.</param>
internal sealed record SpokenKey(string Key, string? Many, string? Context, string Where);

/// <summary>
/// Reads every sentence out of a built assembly: what the compiler made of the interpolated strings is exactly what is asked for when the
/// program runs, whatever the sources look like.
/// </summary>
internal static class SpokenIn
{
    public static IReadOnlyList<SpokenKey> Assembly(string path)
    {
        using var file = new PEReader(File.OpenRead(path));
        var metadata = file.GetMetadataReader();
        List<SpokenKey> keys = [];
        foreach (var method in Methods(file, metadata))
            keys.AddRange(new SentencesOfMethod(method.Name).Read(method.Calls));
        return keys;
    }

    /// <summary>Methods that make a plain string of a sentence, which is English whoever reads it.</summary>
    public static IReadOnlyList<string> Flattens(string path)
    {
        using var file = new PEReader(File.OpenRead(path));
        var metadata = file.GetMetadataReader();
        return
        [
            .. Methods(file, metadata)
                .Where(m =>
                    m.Calls.Any(c => c is { OnSentence: true, Name: "op_Implicit" or "ToString" or "get_Length" })
                )
                .Select(m => m.Name)
                .Distinct()
                .Order(StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<(string Name, IReadOnlyList<IlCall> Calls)> Methods(
        PEReader file,
        MetadataReader metadata
    )
    {
        foreach (var handle in metadata.MethodDefinitions)
        {
            var method = metadata.GetMethodDefinition(handle);
            if (method.RelativeVirtualAddress == 0)
                continue;
            var type = metadata.GetTypeDefinition(method.GetDeclaringType());
            var body = file.GetMethodBody(method.RelativeVirtualAddress).GetILBytes()!;
            yield return ($"{Named(metadata, type)}.{metadata.GetString(method.Name)}", IlCall.In(body, metadata));
        }
    }

    /// <summary>The type as it is written; of those that the compiler makes the one around them.</summary>
    private static string Named(MetadataReader metadata, TypeDefinition type)
    {
        while (metadata.GetString(type.Name).StartsWith('<') && !type.GetDeclaringType().IsNil)
            type = metadata.GetTypeDefinition(type.GetDeclaringType());
        return metadata.GetString(type.Name);
    }
}
