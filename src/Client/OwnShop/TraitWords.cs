namespace Witnessmark.Client.OwnShop;

/// <summary>How a machine may be built, in words for people.</summary>
internal static class TraitWords
{
    /// <summary>What is asked.</summary>
    public static string Of(string trait) =>
        trait switch
        {
            "kind" => Say($"What it is"),
            "wheels" => Say($"Wheels"),
            "front-brake" => Say($"Front brake"),
            "rear-brake" => Say($"Rear brake"),
            "clutch" => Say($"Clutch"),
            "throttle" => Say($"Throttle"),
            "fuel" => Say($"Fuel"),
            "cooled" => Say($"Cooled by"),
            "valves" => Say($"Valve clearance set by"),
            "battery" => Say($"Battery"),
            "abs" => Say($"ABS"),
            "tether" => Say($"Tether switch"),
            "winch" => Say($"Winch"),
            _ => trait,
        };

    /// <summary>What may be answered.</summary>
    public static string Word(string word) =>
        word switch
        {
            "motorcycle" => Say($"motorcycle"),
            "quad" => Say($"quad"),
            "spoked" => Say($"spoked"),
            "cast" => Say($"cast"),
            "disc" => Say($"disc"),
            "drum" => Say($"drum"),
            "cable" => Say($"cable"),
            "hydraulic" => Say($"hydraulic"),
            "automatic" => Say($"automatic"),
            "electronic" => Say($"electronic"),
            "injection" => Say($"injection"),
            "carburettor" => Say($"carburettor"),
            "liquid" => Say($"liquid"),
            "air" => Say($"air"),
            "shims" => Say($"shims"),
            "screws" => Say($"screws"),
            "sealed" => Say($"sealed"),
            "filled" => Say($"filled"),
            "chain" => Say($"chain"),
            "belt" => Say($"belt"),
            "shaft" => Say($"shaft"),
            "true" => Say($"yes"),
            "false" => Say($"no"),
            _ => word,
        };
}
