namespace Witnessmark.Handbook.FinalDrive;

/// <summary>What every calculation on a chain loop refuses.</summary>
internal static class LoopRefusal
{
    public static Answer<T> Touching<T>()
        where T : class =>
        Answer<T>.Refuse(
            "sprocketsTouch",
            $"With these teeth the sprockets would touch at this centre distance: check the teeth, the pitch and the distance."
        );

    public const string TooSlackKey = "tooSlack";

    public static Sentence TooSlack =>
        $"The chain would be so long that its middle reaches the other run or a sprocket: check the links, the teeth and the distance.";
}
