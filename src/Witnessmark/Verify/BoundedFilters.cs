using System.IO.Compression;
using UglyToad.PdfPig.Filters;
using UglyToad.PdfPig.Tokens;

namespace Witnessmark.Verify;

/// <summary>Unpacks what a PDF holds packed, as long as it stays within what a paper can have: a page of zeros packs a thousandfold.</summary>
/// <param name="most">Bytes of all streams of the file together.</param>
internal sealed class BoundedFilters(long most) : IFilterProvider
{
    // RFC 1950, 2.2: two bytes stand before the deflated ones
    private const int ZlibHead = 2;

    // ISO 32000-1, 7.4.4: codes of 9 bits and more, of which none stands for more than 4095 bytes
    private const long MostOfLzw = 4095;

    private readonly IFilterProvider all = DefaultFilterProvider.Instance;
    private long taken;

    /// <summary>Whether more was asked for.</summary>
    public bool AreOver => taken > most;

    public IReadOnlyList<IFilter> GetFilters(DictionaryToken dictionary) => Bounded(all.GetFilters(dictionary));

    public IReadOnlyList<IFilter> GetNamedFilters(IReadOnlyList<NameToken> names) =>
        Bounded(all.GetNamedFilters(names));

    public IReadOnlyList<IFilter> GetAllFilters() => Bounded(all.GetAllFilters());

    private IFilter[] Bounded(IReadOnlyList<IFilter> filters) => [.. filters.Select(f => new BoundedFilter(f, this))];

    private void Take(long bytes)
    {
        taken += bytes;
        if (AreOver)
            throw new InvalidDataException($"It unpacks to more than {most} bytes.");
    }

    private sealed class BoundedFilter(IFilter filter, BoundedFilters within) : IFilter
    {
        public bool IsSupported => filter.IsSupported;

        public Memory<byte> Decode(Memory<byte> input, DictionaryToken stream, IFilterProvider provider, int place)
        {
            if (filter is FlateFilter)
                Measure(input);
            else if (filter is LzwFilter)
                within.Take(input.Length * MostOfLzw);
            var unpacked = filter.Decode(input, stream, provider, place);
            if (filter is not (FlateFilter or LzwFilter))
                within.Take(unpacked.Length);
            return unpacked;
        }

        // once without keeping it: the filter itself keeps all of it before anybody could look
        private void Measure(Memory<byte> input)
        {
            if (input.Length <= ZlibHead)
                return;
            using var packed = new DeflateStream(
                new MemoryStream(input[ZlibHead..].ToArray()),
                CompressionMode.Decompress
            );
            var part = new byte[1 << 16];
            try
            {
                for (var read = packed.Read(part); read > 0; read = packed.Read(part))
                    within.Take(read);
            }
            catch (InvalidDataException) when (!within.AreOver)
            {
                // broken from here on; what comes of it is the filter's to say
            }
        }
    }
}
