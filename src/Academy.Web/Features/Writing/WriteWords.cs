using Academy.Storage;
using Academy.Web.Wording;

namespace Academy.Web.Features.Writing;

/// <summary>What is said when two write one module at once.</summary>
internal static class WriteWords
{
    public const string Gone =
        "This draft was published or thrown away in between. Your text is still here: saved, it begins a new draft";

    public static string MovedOn(Draft there, Names names) =>
        $"{names.Of(there.Author)} saved this {names.Time.Ago(there.SavedAt)}, after you began. Below is that text beside yours: "
        + "save yours in its place, or go on from that";

    public static OtherText There(Draft there, Names names) =>
        new(
            $"What {names.Of(there.Author)} saved {names.Time.Ago(there.SavedAt)}",
            "Nothing of it is changed yet.",
            there.Text,
            IsThere: true
        );
}
