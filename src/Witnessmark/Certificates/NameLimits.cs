using System.Formats.Asn1;
using System.Net;
using System.Net.Sockets;
using System.Numerics;
using System.Security.Cryptography.X509Certificates;

namespace Witnessmark.Certificates;

/// <summary>The names that an authority may vouch for, written into it: with a stolen key nobody can pass for a bank.</summary>
/// <remarks>
/// <para><b>Source.</b> RFC 5280, 4.2.1.10 (name constraints): a domain stands for itself and all below it, an address for a range
/// by its mask; a kind of name that is not limited is not limited at all, so that both kinds have to stand here.</para>
/// </remarks>
/// <param name="Domains">Domains, each with all below it.</param>
/// <param name="Addresses">Ranges of addresses.</param>
public sealed record NameLimits(IReadOnlyList<string> Domains, IReadOnlyList<IPNetwork> Addresses)
{
    private const string Oid = "2.5.29.30";
    private static readonly Asn1Tag Permitted = new(TagClass.ContextSpecific, 0, isConstructed: true);
    private static readonly Asn1Tag Dns = new(TagClass.ContextSpecific, 2);
    private static readonly Asn1Tag Ip = new(TagClass.ContextSpecific, 7);

    /// <summary>The limits of a new authority: what exists in one's own networks only, and the names given.</summary>
    public static NameLimits For(ServerNames names)
    {
        var own = new NameLimits(OwnNetwork.Domains, OwnNetwork.Addresses);
        return own with { Domains = [.. own.Domains, .. names.Dns.Where(d => !own.Has(d))] };
    }

    /// <summary>The limits that an authority has, or null: it may vouch for anything.</summary>
    public static NameLimits? Of(X509Certificate2 authority) =>
        authority.Extensions[Oid] is { } written ? Read(written.RawData) : null;

    /// <summary>Why an authority with these limits cannot vouch for names, or null.</summary>
    public string? Refusal(ServerNames names)
    {
        string[] outside =
        [
            .. names.Dns.Where(d => !Has(d)),
            .. names.Addresses.Where(a => !Addresses.Any(n => n.Contains(a))).Select(a => a.ToString()),
        ];
        return outside.Length == 0
            ? null
            : $"The shop's authority does not vouch for {string.Join(", ", outside)}: it was made for {string.Join(", ", Domains)} and private addresses, and that cannot be changed. Choose a name in .local, or move keys/authority.pem away and make another authority, which every device has to trust anew.";
    }

    /// <summary>As the extension of a certificate.</summary>
    public X509Extension Extension()
    {
        var writer = new AsnWriter(AsnEncodingRules.DER);
        using (writer.PushSequence())
        using (writer.PushSequence(Permitted))
        {
            foreach (var domain in Domains)
                using (writer.PushSequence())
                    writer.WriteCharacterString(UniversalTagNumber.IA5String, domain, Dns);
            foreach (var network in Addresses)
                using (writer.PushSequence())
                    writer.WriteOctetString([.. network.BaseAddress.GetAddressBytes(), .. Mask(network)], Ip);
        }
        return new(Oid, writer.Encode(), critical: true);
    }

    private static NameLimits Read(byte[] written)
    {
        var permitted = new AsnReader(written, AsnEncodingRules.DER).ReadSequence().ReadSequence(Permitted);
        List<string> domains = [];
        List<IPNetwork> addresses = [];
        while (permitted.HasData)
        {
            var one = permitted.ReadSequence();
            var kind = one.PeekTag();
            if (kind.HasSameClassAndValue(Dns))
                domains.Add(one.ReadCharacterString(UniversalTagNumber.IA5String, Dns));
            else if (kind.HasSameClassAndValue(Ip))
                addresses.Add(Network(one.ReadOctetString(Ip)));
        }
        return new(domains, addresses);
    }

    private bool Has(string name) =>
        Domains.Any(d => name == d || name.EndsWith($".{d}", StringComparison.OrdinalIgnoreCase));

    private static byte[] Mask(IPNetwork network)
    {
        var mask = new byte[network.BaseAddress.AddressFamily is AddressFamily.InterNetwork ? 4 : 16];
        for (var bit = 0; bit < network.PrefixLength; bit++)
            mask[bit / 8] |= (byte)(0x80 >> (bit % 8));
        return mask;
    }

    private static IPNetwork Network(byte[] addressAndMask)
    {
        var half = addressAndMask.Length / 2;
        var bits = addressAndMask[half..].Sum(b => BitOperations.PopCount(b));
        return new(new IPAddress(addressAndMask[..half]), bits);
    }
}
