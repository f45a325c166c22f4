namespace Witnessmark.Doors;

public sealed partial class Door
{
    /// <summary>A lead who is in shows the passphrase again, to let in and to shut out.</summary>
    public Answered<string> ShowAgain(SignedIn who, string token, string secret) =>
        There.Do(rows =>
            Tried(rows, who.Device, who.Person, secret) is { } no
                ? Answered<string>.Because(no)
                : ShownAgain.Make(KeyIn(rows), Now, Token.Hash(token))
        );

    /// <summary>Whether somebody showed their secret within the last minutes, at sign-in or since.</summary>
    public bool ShownLately(SignedIn who, string token, string? shown) =>
        Now - (ShownAgain.At(shown, Key, Token.Hash(token)) ?? who.Since) <= ShownAgain.Life
        || Now - who.Since <= ShownAgain.Life;

    /// <summary>Somebody who is in takes another secret in place of their own, and is in anew; elsewhere they are out.</summary>
    public Answered<CameIn> ChangeSecret(SignedIn who, string secret, string next) =>
        There.Do(rows =>
        {
            if (Tried(rows, who.Device, who.Person, secret) is { } no)
                return Answered<CameIn>.Because(no);
            if (SecretRules.Refuses(next, who.Role, who.Person, shop().Name) is { } why)
                return Answered<CameIn>.Because(why, 400);
            if (next == secret)
                return Answered<CameIn>.Because($"That is the one that you have.", 400);
            rows.Put(new(who.Person, SecretHash.Of(who.Person, next), 0, null, false));
            rows.EndAllOf(who.Person);
            Write(rows, DoorEvents.SecretChosen, who.Person, who.Device, BookLine.SecretChanged(who.Person));
            return In(rows, who.Device, who.Person);
        });
}
