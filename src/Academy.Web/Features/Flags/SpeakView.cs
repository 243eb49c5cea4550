using Academy.Competence.Grooms;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Flags;

/// <summary>What the owner spoke about.</summary>
public sealed class SpeakForm
{
    private const int MostLetters = 2000;

    public Guid Operation { get; set; }

    public long Version { get; set; }

    public string? Says { get; set; }

    /// <summary>What is wrong with it as a form; null where nothing is.</summary>
    public string? Wrong => Says?.Length > MostLetters ? $"What you spoke about: at most {MostLetters} letters" : null;
}

/// <summary>One flagged groom, and what was spoken about it.</summary>
public sealed record SpeakView(
    string Heading,
    string Title,
    string Groomed,
    string GroomHref,
    string Flag,
    string? Spoken,
    string? Words,
    bool IsOpen
)
{
    public static SpeakView Of(OneGroom one, FlagStory flag) =>
        new(
            flag.IsOpen ? "Done alone without being alone for it" : "Spoken about",
            one.Title,
            one.Groomed,
            Paths.Groom(one.Groom.Id.Value),
            Say.Flag(flag, one.Names),
            Say.SpokenAbout(flag, one.Names),
            flag.Spoken.IsEmpty ? null : flag.Spoken.Text,
            flag.IsOpen
        );
}
