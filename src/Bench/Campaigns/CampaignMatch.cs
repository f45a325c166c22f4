namespace Witnessmark.Bench.Campaigns;

/// <summary>The machine that is asked about.</summary>
/// <param name="Make">Make.</param>
/// <param name="Model">Model.</param>
/// <param name="Year">Model year, or null when unknown.</param>
/// <param name="Vin">All 17 signs, or null when unknown.</param>
/// <param name="Built">Day on which it was built, or null when unknown.</param>
public sealed record AskedMachine(string Make, string Model, int? Year, string? Vin = null, DateOnly? Built = null);

/// <summary>Whether a campaign concerns a machine.</summary>
public enum Concern
{
    /// <summary>Everything that it names fits, and it names enough.</summary>
    Concerns,

    /// <summary>The data cannot tell: check with the maker.</summary>
    MayConcern,

    /// <summary>Something that it names does not fit.</summary>
    DoesNot,
}

/// <summary>A campaign beside a machine.</summary>
/// <param name="Campaign">The campaign.</param>
/// <param name="Concern">Whether it concerns the machine.</param>
/// <param name="Why">The reason in a sentence.</param>
public sealed record CampaignMatch(Campaign Campaign, Concern Concern, Sentence Why)
{
    private static Sentence AskTheMaker => $"check with the maker";

    /// <summary>
    /// Compares make, model, year and, where the campaign names them, VIN and day of building. One that does not fit: it does
    /// not concern. Else one that cannot be told: it may. The public list names no single machine, so a fit there is "may".
    /// </summary>
    public static CampaignMatch Of(Campaign campaign, AskedMachine machine)
    {
        IReadOnlyList<(Concern Concern, Sentence Why)> answers =
        [
            Make(campaign, machine),
            Model(campaign, machine),
            Year(campaign, machine),
            .. campaign.Source == CampaignSource.Public ? [NoSingleMachine] : Single(campaign.Says, machine),
        ];
        var concern = answers.Max(a => a.Concern);
        var why = Sentence.List(answers.Where(a => a.Concern == concern && a.Why.Length > 0).Select(a => a.Why));
        return new(campaign, concern, concern == Concern.MayConcern ? (Sentence)$"{why}: {AskTheMaker}" : why);
    }

    private static (Concern, Sentence) NoSingleMachine =>
        (Concern.MayConcern, $"the public list does not say which machines of that model and year");

    private static (Concern, Sentence) Make(Campaign campaign, AskedMachine machine) =>
        NameKey.Of(campaign.Make) == NameKey.Of(machine.Make)
            ? (Concern.Concerns, (Sentence)$"make, model and year fit")
            : (Concern.DoesNot, (Sentence)$"it is about another make, {campaign.Make}");

    private static (Concern, Sentence) Model(Campaign campaign, AskedMachine machine) =>
        NameKey.Of(campaign.Model) is not { Length: > 0 } model
            ? (Concern.MayConcern, (Sentence)$"the list does not say which model")
        : model == NameKey.Of(machine.Model) ? (Concern.Concerns, Sentence.Empty)
        : (Concern.DoesNot, (Sentence)$"it is about another model, {campaign.Model}");

    private static (Concern, Sentence) Year(Campaign campaign, AskedMachine machine) =>
        (campaign.Year, machine.Year) switch
        {
            (null, _) => (Concern.MayConcern, (Sentence)$"the list does not know the model year"),
            (_, null) => (Concern.MayConcern, (Sentence)$"the machine's model year is not known"),
            var (listed, own) when listed == own => (Concern.Concerns, Sentence.Empty),
            var (listed, _) => (Concern.DoesNot, (Sentence)$"it is about model year {listed}"),
        };

    private static IEnumerable<(Concern, Sentence)> Single(CampaignText says, AskedMachine machine)
    {
        if (says.Vins.Count > 0)
            yield return machine.Vin is not { } vin ? (Concern.MayConcern, (Sentence)$"the machine's VIN is not known")
            : says.Vins.Any(v => VinRange.Read(v).Range!.Holds(vin))
                ? (Concern.Concerns, (Sentence)$"its VIN is among those that are named")
            : (Concern.DoesNot, (Sentence)$"its VIN is not among those that are named");
        if (says.BuiltFrom is null && says.BuiltTo is null)
            yield break;
        yield return machine.Built is not { } built
            ? (Concern.MayConcern, (Sentence)$"the machine's day of building is not known")
        : built >= (says.BuiltFrom ?? DateOnly.MinValue) && built <= (says.BuiltTo ?? DateOnly.MaxValue)
            ? (Concern.Concerns, (Sentence)$"it was built in the time that is named")
        : (Concern.DoesNot, (Sentence)$"it was not built in the time that is named");
    }
}
