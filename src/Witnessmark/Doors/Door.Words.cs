using Witnessmark.Bench.Record;

namespace Witnessmark.Doors;

public sealed partial class Door
{
    /// <summary>Somebody gives their word for an entry on the device that somebody is signed in on: a lead beside whoever works there, or the latter.</summary>
    public Answered<string> GiveWord(SignedIn who, Word word, string job, string secret)
    {
        if (NoSay(word) is { } no)
            return Answered<string>.Because(no);
        return There.Do(rows =>
        {
            if (Tried(rows, who.Device, word.Name, secret) is { } why)
                return Answered<string>.Because(why);
            Write(rows, DoorEvents.WordGiven, word.Name, who.Device, BookLine.WordGiven(word, job));
            return GivenWord.Make(KeyIn(rows), Now, word, who.Device, job);
        });
    }

    /// <summary>Whether the shop gave this for the word in this job on this device, not longer ago than it is good, and no other entry came with it.</summary>
    public bool IsGiven(string? given, string entry, Word word, string device, string job) =>
        given is not null
        && GivenWord.Fits(given, Key, Now, word, device, job)
        && There.Do(rows => rows.Use(given, entry));

    /// <summary>Why somebody's word does not count for this; null when it does.</summary>
    private Sentence? NoSay(Word word) =>
        word.Kind == EntryKind.Dropped && !IsLead(word.Name) ? (Sentence)$"\"{word.Name}\" is no lead of this shop."
        : shop().RoleOf(word.Name) is not >= Role.Technician ? (Sentence)$"\"{word.Name}\" does not work in this shop."
        : null;
}
