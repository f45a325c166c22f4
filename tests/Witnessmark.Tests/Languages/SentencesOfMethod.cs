using System.Text;

namespace Witnessmark.Tests.Languages;

/// <summary>
/// Follows the calls of one method: a sentence is begun with the length of its literal parts and the number of its arguments, which tell when
/// it is whole; sentences in its arguments are begun and whole before it is.
/// </summary>
internal sealed class SentencesOfMethod(string method)
{
    private readonly Stack<Open> open = new();
    private readonly List<(SpokenKey Key, int Depth)> whole = [];

    public IEnumerable<SpokenKey> Read(IEnumerable<IlCall> calls)
    {
        foreach (var call in calls.Where(c => c.OnSentence))
        {
            switch (call.Name)
            {
                case ".ctor":
                    open.Push(new(call.Numbers.Item1, call.Numbers.Item2));
                    break;
                case "AppendLiteral":
                    open.Peek().Add(call.Text!);
                    break;
                case "AppendFormatted":
                    open.Peek().AddArgument();
                    break;
                case "Meaning":
                    Last(0, (key, _) => key with { Context = call.Text });
                    break;
                case "Count":
                    Pair();
                    break;
            }
            while (open.TryPeek(out var now) && now.IsWhole)
                whole.Add((new(open.Pop().Key, null, null, method), open.Count));
        }
        return whole.Select(w => w.Key);
    }

    private void Pair()
    {
        var many = Last(0, (key, _) => key).Key;
        Last(1, (key, _) => key with { Many = many });
        whole.RemoveAt(IndexOf(0));
    }

    private SpokenKey Last(int before, Func<SpokenKey, int, SpokenKey> change)
    {
        var at = IndexOf(before);
        whole[at] = (change(whole[at].Key, at), whole[at].Depth);
        return whole[at].Key;
    }

    /// <summary>The last but so many of those that stand beside each other here.</summary>
    private int IndexOf(int before)
    {
        var at = whole.Count;
        for (var left = before; left >= 0; left--)
            at = whole.FindLastIndex(at - 1, w => w.Depth == open.Count);
        return at;
    }

    private sealed class Open(int letters, int arguments)
    {
        private readonly StringBuilder key = new();
        private int lettersHad;
        private int argumentsHad;

        public string Key => key.ToString();

        public bool IsWhole => lettersHad == letters && argumentsHad == arguments;

        public void Add(string text)
        {
            lettersHad += text.Length;
            key.Append(text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal));
        }

        public void AddArgument() => key.Append('{').Append(argumentsHad++).Append('}');
    }
}
