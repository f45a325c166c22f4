using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>torque-setting</c>.</summary>
internal static class TorqueSettingContract
{
    private static readonly Input<Torque> TorqueGiven = Take.Positive<Torque>("torque", "torque of the figure");
    private static readonly Input<Length> WrenchLength = Take.Positive<Length>(
            "wrenchLength",
            "drive square to the middle of the hand; needed with an extension"
        )
        .OrNothing();
    private static readonly Input<Length> Extension = Take.Quantity<Length>("extension", "drive square to the nut")
        .OrNothing();
    private static readonly Input<Angle> ExtensionAngle = Take.Bounded<Angle>(
            "extensionAngle",
            "0 straight on, 90 deg sideways, 180 deg back under the handle",
            b => Math.Abs(b) <= Math.PI,
            "-180 deg to 180 deg"
        )
        .Or(default, "0 deg, straight on");
    private static readonly Input<Torque> Prevailing = Take.Quantity<Torque>(
            "prevailing",
            "running torque of a lock nut, read before it seats"
        )
        .Or(default, "0 N·m");
    private static readonly Input<bool> Includes = Take.Truth(
            "figureIncludesPrevailing",
            "whether the figure holds it already"
        )
        .Or(true, "true");
    private static readonly Input<Ratio> ToolTolerance = Take.Quantity<Ratio>(
            "toolTolerance",
            "half-width of the wrench's error, as a part of the torque"
        )
        .Or(default, "0 %");
    private static readonly Input<Length> LengthError = Take.Quantity<Length>(
            "lengthError",
            "half-width of the place of the hand"
        )
        .Or(default, "0 mm");
    private static readonly Input<Length> ExtensionError = Take.Quantity<Length>(
            "extensionError",
            "half-width of the extension's length"
        )
        .Or(default, "0 mm");
    private static readonly Input<Angle> AngleError = Take.Quantity<Angle>(
            "angleError",
            "half-width of the extension's angle"
        )
        .Or(default, "0 deg");

    private static readonly Input[] Errors = [ToolTolerance, LengthError, ExtensionError, AngleError];

    public static Calculation Calculation { get; } =
        new(
            "torque-setting",
            "Fasteners",
            "What to set on the torque wrench with an extension or a lock nut.",
            "own derivation; FAA AC 43.13-1B figure 7-2; US Army TM 1-1500-204-23-9 figure 8-16",
            typeof(TorqueSetting),
            [TorqueGiven, WrenchLength, Extension, ExtensionAngle, Prevailing, Includes, .. Errors],
            [
                new("setting", "N·m", "to set on the wrench"),
                new("factor", "1", "of the extension"),
                new("standardUncertainty", "N·m", "of the torque at the nut, when an error is given"),
                new("worstCase", "N·m", "all half-widths added, when an error is given"),
            ],
            Set
        );

    private static Reply Set(Given given)
    {
        var set = TorqueSetting.For(
            given.Of(TorqueGiven),
            Fitted(given),
            given.Of(Includes) ? default : given.Of(Prevailing),
            Array.Exists(Errors, given.Has)
                ? new(given.Of(ToolTolerance), given.Of(LengthError), given.Of(ExtensionError), given.Of(AngleError))
                : null
        );
        return new Gives()
            .With("setting", set.Setting, "N·m")
            .With("factor", set.Factor, "1")
            .With("standardUncertainty", set.StandardUncertainty, "N·m")
            .With("worstCase", set.WorstCase, "N·m");
    }

    private static WrenchExtension? Fitted(Given given)
    {
        if (!given.Has(Extension))
            return Array.Find<Input>([ExtensionAngle, ExtensionError, AngleError], given.Has) is { } stray
                ? throw given.Wrong(stray.Name, "given without an extension", "only beside extension")
                : null;
        if (!given.Has(WrenchLength))
            throw given.Wrong("wrenchLength", "missing beside an extension", WrenchLength.Kind);
        var fitted = new WrenchExtension(given.Of(WrenchLength), given.Of(Extension), given.Of(ExtensionAngle));
        return fitted.ReachesPastTheHand
            ? throw given.Wrong(
                "extension",
                "it reaches back to the hand or beyond",
                "wrenchLength + extension · cos extensionAngle above zero"
            )
            : fitted;
    }
}
