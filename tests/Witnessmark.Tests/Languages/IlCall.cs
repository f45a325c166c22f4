using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;

namespace Witnessmark.Tests.Languages;

/// <summary>A call in the order in which it stands in a method, with the constants that were loaded before it.</summary>
/// <param name="Name">The method that is called.</param>
/// <param name="OnSentence">Whether it is one of a sentence.</param>
/// <param name="Text">The last text loaded before it.</param>
/// <param name="Numbers">The last two whole numbers loaded before it.</param>
internal sealed record IlCall(string Name, bool OnSentence, string? Text, (int, int) Numbers)
{
    private static readonly Dictionary<int, OpCode> Codes = typeof(OpCodes)
        .GetFields()
        .Select(f => f.GetValue(null))
        .OfType<OpCode>()
        .ToDictionary(c => (int)(ushort)c.Value);

    public static IReadOnlyList<IlCall> In(byte[] il, MetadataReader metadata)
    {
        List<IlCall> calls = [];
        string? text = null;
        var numbers = (0, 0);
        for (var at = 0; at < il.Length; )
        {
            var code = il[at] == 0xFE ? Codes[0xFE00 | il[at + 1]] : Codes[il[at]];
            at += code.Size;
            if (Number(code, il, at) is { } number)
                numbers = (numbers.Item2, number);
            if (code == OpCodes.Ldstr)
                text = metadata.GetUserString(MetadataTokens.UserStringHandle(BitConverter.ToInt32(il, at) & 0xFFFFFF));
            if (code == OpCodes.Call || code == OpCodes.Callvirt || code == OpCodes.Newobj)
            {
                var (name, sentence) = Called(metadata, MetadataTokens.EntityHandle(BitConverter.ToInt32(il, at)));
                calls.Add(new(name, sentence, text, numbers));
            }
            at += code.OperandType == OperandType.InlineSwitch ? 4 + 4 * BitConverter.ToInt32(il, at) : SizeOf(code);
        }
        return calls;
    }

    private static int? Number(OpCode code, byte[] il, int at) =>
        code == OpCodes.Ldc_I4 ? BitConverter.ToInt32(il, at)
        : code == OpCodes.Ldc_I4_S ? (sbyte)il[at]
        : code.Value >= OpCodes.Ldc_I4_M1.Value && code.Value <= OpCodes.Ldc_I4_8.Value
            ? code.Value - OpCodes.Ldc_I4_0.Value
        : null;

    private static int SizeOf(OpCode code) =>
        code.OperandType switch
        {
            OperandType.InlineNone => 0,
            OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
            OperandType.InlineVar => 2,
            OperandType.InlineI8 or OperandType.InlineR => 8,
            _ => 4,
        };

    private static (string Name, bool OnSentence) Called(MetadataReader metadata, EntityHandle method)
    {
        if (method.Kind == HandleKind.MethodSpecification)
            method = metadata.GetMethodSpecification((MethodSpecificationHandle)method).Method;
        if (method.Kind == HandleKind.MemberReference)
        {
            var member = metadata.GetMemberReference((MemberReferenceHandle)method);
            return (
                metadata.GetString(member.Name),
                member.Parent.Kind == HandleKind.TypeReference
                    && metadata.GetString(metadata.GetTypeReference((TypeReferenceHandle)member.Parent).Name)
                        == "Sentence"
            );
        }
        var own = metadata.GetMethodDefinition((MethodDefinitionHandle)method);
        return (
            metadata.GetString(own.Name),
            metadata.GetString(metadata.GetTypeDefinition(own.GetDeclaringType()).Name) == "Sentence"
        );
    }
}
