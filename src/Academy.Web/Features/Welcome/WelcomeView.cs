using Academy.Competence.Salons;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Welcome;

/// <summary>The first things of a salon, each with how far it is. None has to be done, and none in this order.</summary>
public sealed record WelcomeView(string Heading, IReadOnlyList<FirstThing> Things)
{
    public static WelcomeView Of(SalonBook book, Guid owner, int declarations, int dogs, int changedThresholds, int suggested)
    {
        FirstThing?[] things =
        [
            new(
                Paths.People,
                "People",
                "Everybody who grooms here, with a link to sign in.",
                book.People.Count > 1 ? Counts.Of(book.People.Count, "person", "people") : null,
                "Add people"
            ),
            new(
                Paths.Person(owner) + "/experience",
                "Experience",
                "What you and your seniors could do before. Somebody has to be alone in a skill before anybody can be judged in it.",
                declarations > 0 ? $"{declarations} declared" : null,
                "Declare yours"
            ),
            new(
                Paths.Thresholds,
                "Thresholds",
                "What each coat and technique asks. They begin with the usual numbers, and the page says what these let through.",
                changedThresholds > 0 ? $"{changedThresholds} of your own" : null,
                "Look at them"
            ),
            suggested == 0
                ? null
                : new(
                    Paths.Suggested,
                    "Modules",
                    "The library has more than your skills ask for. You say which of it a starter has to pass.",
                    Done: null,
                    "Choose them"
                ),
            new(
                Paths.Dogs,
                "Dogs",
                "Name, breed or cross, coat, hazards. They can also come one by one, as they stand on the table.",
                dogs > 0 ? Counts.Of(dogs, "dog") : null,
                "Add dogs"
            ),
            new(
                Paths.House,
                "The vet’s telephone",
                "It stands on the heat card, in one touch, for everybody and without signing in.",
                book.VetPhone.Length > 0 ? book.VetPhone : null,
                "Write it down"
            ),
        ];
        FirstThing[] here = [.. things.OfType<FirstThing>()];
        return new WelcomeView(HeadingOf(book.Name, here.Count(thing => thing.Done is null)), here);
    }

    private static string HeadingOf(string salon, int open) =>
        open == 0 ? $"{salon} is ready for its dogs" : $"{salon} is open; {Counts.Of(open, "thing")} can still be filled in";
}

/// <summary>One of the first things: what it is for, how far it is, where it is done.</summary>
public sealed record FirstThing(string Path, string Name, string For, string? Done, string Act);
