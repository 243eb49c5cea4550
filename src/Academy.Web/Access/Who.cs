using System.Diagnostics.CodeAnalysis;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Access;

/// <summary>
/// The person signed in, as her salon's book describes her at this request: a role taken away is gone with the next page.
/// Pages that open for anybody ask <see cref="IsHere"/> first.
/// </summary>
public sealed class Who(TimeProvider clock, Door door, DemoDoor demo)
{
    private Present? _present;

    [MemberNotNullWhen(true, nameof(_present))]
    public bool IsHere => _present is not null;

    public SalonId Salon => Now.Badge.Salon;

    /// <summary>The salon's book as it was when the request came in.</summary>
    public SalonBook Book => Now.Book;

    public Person Person => Now.Person;

    public Seat Seat =>
        _present?.Person.Role switch
        {
            null => Seat.Nobody,
            Role.Owner => Seat.Owner,
            Role.Senior => Seat.Senior,
            _ => Seat.Junior,
        };

    /// <summary>What she holds in her hand, in a few fixed words: it goes into the ledger.</summary>
    public string Device => Now.Badge.Device;

    public Guid Account => Now.Badge.Account;

    /// <summary>Which of the sessions going on is this one.</summary>
    public string Session => Now.Badge.Session;

    public TimeZoneInfo Zone => Book.Zone;

    public DateOnly Today => SalonDay.Of(clock.GetUtcNow(), Zone);

    /// <summary>Days and times in words, in the salon's zone and as of now.</summary>
    public SalonTime Time => new(Zone, clock.GetUtcNow());

    /// <summary>What sentences call people and skills here.</summary>
    public Names Names => Names.Of(Book, clock.GetUtcNow());

    /// <summary>Her hand, to be written beside a fact.</summary>
    public Hand Hand => new(Person.Id, Device, clock.GetUtcNow());

    /// <summary>Why <see cref="ConfirmAsync"/> said no, in words for the person.</summary>
    public string? Unconfirmed { get; private set; }

    /// <summary>
    /// Asks the password again, before what weighs much: the owner's signature, a change of password. A wrong one counts like a
    /// failed sign-in, and too many close both ways.
    /// </summary>
    public async Task<bool> ConfirmAsync(string? password)
    {
        var answer = demo.IsOpen ? demo.Confirm(password) : await door.ConfirmAsync(Account, password ?? "", Now.Source);
        Unconfirmed = answer is Entrance.NotFitting ? "Password: this is not yours. Write it once more" : answer.Why;
        return answer is Entrance.Open;
    }

    internal void Comes(Present present) => _present = present;

    private Present Now =>
        _present ?? throw new InvalidOperationException("Nobody is signed in: the page must name a policy, or ask IsHere first.");
}

/// <summary>What is known of somebody who is signed in.</summary>
internal sealed record Present(Badge Badge, SalonBook Book, Person Person, string Source);
