using System.Globalization;

namespace Witnessmark.Serve;

/// <summary>
/// Which protocols a server speaks: the newest and the one before, so that devices that have not loaded the newer program yet work on meanwhile.
/// </summary>
/// <param name="newest">The newest.</param>
public sealed class Protocols(int newest)
{
    /// <summary>By which a request says what it speaks. The first protocol did not know it: who says nothing speaks that one.</summary>
    public const string Header = "Witnessmark-Protocol";

    private const int First = 1;

    private int Oldest => Math.Max(First, newest - 1);

    /// <summary>Whether a device may speak it here.</summary>
    public bool Has(int? protocol) => protocol >= Oldest && protocol <= newest;

    /// <summary>The one in which a request is answered: its own where that is spoken, else the newest, which tells the device that it is too old or too new.</summary>
    public int For(HttpRequest request)
    {
        var said = request.Headers[Header].ToString();
        var asked =
            int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number
            : said.Length == 0 ? First
            : newest;
        return Has(asked) ? asked : newest;
    }

    /// <inheritdoc />
    public override string ToString() => Oldest == newest ? $"protocol {newest}" : $"protocols {Oldest} and {newest}";
}
