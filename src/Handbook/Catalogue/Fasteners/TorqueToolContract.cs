using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>torque-tool</c>.</summary>
internal static class TorqueToolContract
{
    private static readonly Input<Torque> Setting = Take.Positive<Torque>("setting", "what the scale must show");
    private static readonly Input<string> Id = Take.Words("id", "name of the tool");
    private static readonly Input<Torque> Min = Take.Quantity<Torque>("min", "lowest mark");
    private static readonly Input<Torque> Max = Take.Positive<Torque>("max", "highest mark");
    private static readonly Input<Ratio> Tolerance = Take.Quantity<Ratio>("tolerance", "permissible deviation");
    private static readonly Input<Tool[]> Tools = Take.Objects(
        "tools",
        "tools at hand",
        [Id, Min, Max, Tolerance],
        Read
    );

    public static Calculation Calculation { get; } =
        new(
            "torque-tool",
            "Fasteners",
            "Which torque tool to take for a setting.",
            "ISO 6789:2003 and ISO 6789-1:2017, 5.1.5",
            typeof(TorqueTool),
            [Setting, Tools],
            [new("tool", "text", "id of the tool to take")],
            given =>
            {
                var tools = given.Of(Tools);
                if (tools.Select(t => t.Id).Distinct(StringComparer.Ordinal).Count() < tools.Length)
                    throw given.Wrong("tools", "two tools with one id", "each id once");
                return Reply.To(TorqueTool.For(given.Of(Setting), tools), t => new Gives().With("tool", t.Id));
            }
        );

    private static Tool Read(Given given) =>
        given.Of(Min) <= given.Of(Max)
            ? new(given.Of(Id), given.Of(Min), given.Of(Max), given.Of(Tolerance))
            : throw given.Wrong("min", "above max", "the ends in order");
}
