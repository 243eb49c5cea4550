using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Salons;

namespace Academy.Competence.Quizzes;

/// <summary>An edition as its author asks to publish it.</summary>
/// <param name="Module">What it would be.</param>
/// <param name="Findings">How many things in it have still to be put right.</param>
/// <param name="WrittenBy">Who wrote it.</param>
/// <param name="ReviewedBy">The second person who read it, if one did.</param>
/// <param name="Change">What changed, in the author's words.</param>
/// <param name="CatchUpBy">Where it changes something that can hurt: the last day on which an older pass still counts.</param>
/// <param name="LibraryHash">The fingerprint of the library's edition whose words it has; null where the words are the salon's own.</param>
public sealed record EditionOffered(
    Module Module,
    int Findings,
    Person WrittenBy,
    Person? ReviewedBy,
    Words Change,
    DateOnly? CatchUpBy,
    string? LibraryHash = null
)
{
    /// <summary>Whether it changes something that a dog or a person can be hurt by.</summary>
    public bool IsSafetyCritical => Module.SafetyCriticalSince == Module.Edition;
}

/// <summary>Makes a module's next edition the one that the salon studies.</summary>
public static class Publishing
{
    /// <summary>The longest time that older passes count after a safety change, in days (the salon's own rule, no published source).</summary>
    public const int LongestCatchUp = 60;

    /// <summary>The days left to catch up where a library does not say, counted from when the salon saw the edition.</summary>
    public const int UsualCatchUp = 14;

    /// <summary>The last day to catch up with a safety change that came with the library, where a salon sees it today.</summary>
    public static DateOnly CatchUpBy(Module module, DateOnly today) => today.AddDays(module.CatchUpDays ?? UsualCatchUp);

    /// <summary>Who could read a module of this author before it is published: owners and seniors who write, who are here and not the author.</summary>
    public static IEnumerable<Person> CouldReview(SalonBook book, PersonId author, DateOnly today) =>
        book.People.Where(person => person.Id != author && person.MayWriteModules && person.WorksOn(today));

    /// <summary>The number of the next edition of a module in this salon.</summary>
    /// <remarks>It counts on from every edition that anybody here may have passed, the library's and the salon's own.</remarks>
    public static int NextEdition(SalonBook book, ModuleName module) =>
        book.Library.Where(asked => asked.Module == module).Select(asked => asked.Edition).DefaultIfEmpty().Max() + 1;

    /// <summary>Publishes the edition: as written here, and as asked from now on.</summary>
    /// <remarks>
    /// A first edition is asked of nobody before, so it needs neither a day to catch up by nor words on what changed. In a salon
    /// where nobody else could read it, it is published without a second reader, and the ledger says so.
    /// </remarks>
    public static Decision Publish(EditionOffered offered, SalonBook book, DateOnly today)
    {
        var module = offered.Module;
        var next = NextEdition(book, module.Name);
        return Decision.Of(
            Against(offered, book, today),
            () =>
                [
                    new ModulePublished(
                        module.Name,
                        module.Edition,
                        module.Hash,
                        offered.WrittenBy.Id,
                        offered.ReviewedBy?.Id,
                        offered.IsSafetyCritical,
                        offered.Change,
                        offered.LibraryHash
                    ),
                    new ModuleEditionSeen(
                        module.Name,
                        module.Edition,
                        module.SafetyCriticalSince,
                        module.RefresherDays,
                        module.RenewedEachSpring,
                        module.Hash,
                        next > 1 && offered.IsSafetyCritical ? offered.CatchUpBy : null
                    ),
                ]
        );
    }

    /// <summary>What stands against asking somebody to read it: all that would stand against publishing, but for the reader.</summary>
    public static Listed<Reason> AgainstAsking(EditionOffered offered, SalonBook book, DateOnly today) =>
        Against(offered, book, today).Where(reason => reason is not SecondReaderNeeded).ToListed();

    private static IEnumerable<Reason> Against(EditionOffered offered, SalonBook book, DateOnly today)
    {
        var module = offered.Module;
        var next = NextEdition(book, module.Name);
        if (!offered.WrittenBy.MayWriteModules || offered.ReviewedBy is { MayWriteModules: false })
            yield return new MayNotWriteModules();
        if (offered.ReviewedBy?.Id == offered.WrittenBy.Id)
            yield return new ReviewsOwnModule();
        var could = CouldReview(book, offered.WrittenBy.Id, today).Select(person => person.Id).ToListed();
        if (offered.ReviewedBy is null && !could.IsEmpty)
            yield return new SecondReaderNeeded(could);
        if (module.Edition != next)
            yield return new NotTheNextEdition(module.Edition, next);
        if (offered.Findings > 0)
            yield return new ModuleToPutRight(offered.Findings);
        if (next > 1 && offered.Change.IsEmpty)
            yield return new WordsNeeded(WordsFor.Change);
        if (next > 1 && offered.IsSafetyCritical && !IsCatchUpDay(offered.CatchUpBy, today))
            yield return new CatchUpDayNeeded(today.AddDays(1), today.AddDays(LongestCatchUp));
    }

    private static bool IsCatchUpDay(DateOnly? day, DateOnly today) => day > today && day <= today.AddDays(LongestCatchUp);
}
