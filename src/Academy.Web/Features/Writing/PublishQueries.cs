using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Library;

namespace Academy.Web.Features.Writing;

/// <summary>A draft as somebody would publish it.</summary>
/// <param name="Read">How it reads, with the numbers that it is published under.</param>
/// <param name="Decision">What the rules say; null where it is broken and there is nothing to decide.</param>
/// <param name="Book">The version of the salon's book that they were asked with.</param>
/// <param name="HasMovedOn">Whether the draft was saved, published or thrown away while it was read.</param>
public sealed record Offer(DraftRead Read, Decision? Decision, long Book, bool HasMovedOn)
{
    /// <summary>Every reason against.</summary>
    public Listed<Reason> Against => Decision is Refused refused ? refused.Reasons : [];
}

/// <summary>Publishing: what was read is what is kept, and no two editions get one number.</summary>
public sealed class PublishQueries(
    Who who,
    DraftQueries desk,
    DraftBook drafts,
    EditionBook editions,
    RecordBook records,
    Ledger ledger,
    Shelf shelf
)
{
    public Task<bool> HasPublishedAsync(Guid operation, CancellationToken stop) =>
        ledger.HasKeptAsync(who.Salon, new(operation), stop);

    /// <summary>How a draft reads with the numbers that it will have.</summary>
    public Task<DraftRead> ReadAsync(Draft draft, CancellationToken stop) =>
        desk.ReadAsync(draft.Numbered(who.Book, draft.CatchUpBy is not null), stop);

    /// <summary>The fingerprint of what somebody reads over: a picture replaced meanwhile makes it another.</summary>
    public async Task<string> SeenAsync(Draft draft, CancellationToken stop) =>
        (await ReadAsync(draft, stop)).Lesson?.Module.Hash ?? "";

    /// <summary>Asks the rules, with the salon's book as it is now.</summary>
    public async Task<Offer> OfferAsync(Draft draft, CancellationToken stop)
    {
        // The version is read first: if the book moves on in between, keeping notices it.
        var version = await records.BookVersionAsync(who.Salon, stop);
        var book = await records.SalonAsync(who.Salon, stop);
        var read = await desk.ReadAsync(draft, stop);
        var isThere = (await desk.FindAsync(draft.Module.Value, stop))?.Version == draft.Version;
        if (read.Lesson is not { } lesson)
            return new(read, Decision: null, version, !isThere);

        // The numbers are written by the portal: another one is the next only where somebody has just published this one.
        var isNext = lesson.Module.Edition == Publishing.NextEdition(book, draft.Module);
        var author = book.Find(draft.Author)!;
        var offered = new EditionOffered(
            lesson.Module,
            read.ToPutRight,
            author,
            author.Id == who.Person.Id ? null : who.Person,
            new Words(draft.Change),
            draft.CatchUpBy,
            shelf.LibrarysIn(lesson)
        );
        return new(read, Publishing.Publish(offered, book, who.Today), version, !isThere || !isNext);
    }

    /// <summary>Keeps the edition: its text first, because what the ledger names has to be there.</summary>
    /// <returns>False where it cannot be read any more, or somebody wrote into the salon's book meanwhile.</returns>
    public async Task<bool> KeepAsync(Offer offer, Guid operation)
    {
        if (offer is not { HasMovedOn: false, Read.Lesson: { } lesson, Decision: Granted granted })
            return false;

        await editions.KeepAsync(lesson.Module.Name, lesson.Module.Hash, () => KeptEdition.Of(lesson));
        var expected = new Expected(who.Salon.Value, offer.Book);
        if (await ledger.KeepAsync(who.Salon, granted, who.Hand, new(operation), expected) is Kept.RecordMovedOn)
            return false;
        await drafts.EndAsync(who.Salon, lesson.Module.Name, offer.Read.Draft.Version);
        return true;
    }
}
