using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Sheets;

/// <summary>The files of a workbench as they would be with one more revision of a sheet, to be read before anything is written.</summary>
internal static class SheetShelf
{
    public static IReadOnlyList<SourceText> With(IEnumerable<SourceText> files, FigureSheet? before, SourceText next) =>
        [
            .. files.Select(f =>
                f.Name == next.Name && before is not null
                    ? f with
                    {
                        Name = SheetFolder.NameOf(before.Id, before.Revision),
                    }
                    : f
            ),
            next,
        ];
}
