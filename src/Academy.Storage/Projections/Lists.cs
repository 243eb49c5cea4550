using System.Text.Json;
using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.SignOffs;
using Academy.Competence.Statistics;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Projections;

/// <summary>Keeps the rows that lists are read from: dogs, grooms, who did what and waits for whom, incidents, disputes, days.</summary>
internal sealed class Lists(AcademyDb db, SalonId salon)
{
    /// <param name="told">The fact.</param>
    /// <param name="isNew">Nothing was told about its record before.</param>
    public Task ProjectAsync(Recorded told, bool isNew) =>
        told.Fact switch
        {
            DogDescribed fact => DescribeAsync(fact),
            GroomStarted fact => StartAsync(fact, told),
            GroomAbandoned fact => AbandonAsync(fact),
            GroomLogged fact => TellAsync(fact.Groom, told, isNew),
            SignedOff fact => SignAsync(fact.SignOff),
            LateSignOffAdmitted fact => AdmitAsync(fact),
            SignOffDisputed fact => DisputeAsync(fact, told),
            DisputeAnswered fact => AnswerAsync(fact, told),
            GroomFlagged fact => FlagAsync(fact, told),
            FlagSpokenAbout fact => SpeakAsync(fact, told),
            IncidentReported fact => ReportAsync(fact),
            IncidentReviewed fact => ReviewAsync(fact),
            AttemptHandedIn fact => HandInAsync(fact, told),
            WordsErased fact => EraseAsync(fact),
            PresenceTicked fact => Tick(fact, told),
            RoomRead fact => Read(fact, told),
            _ => Task.CompletedTask,
        };

    private async Task DescribeAsync(DogDescribed fact)
    {
        var row =
            await db.Dogs.FindAsync(salon.Value, fact.Dog.Value)
            ?? db.Dogs.Add(new DogRow { SalonId = salon.Value, Id = fact.Dog.Value }).Entity;
        row.Name = fact.Name.Text;
        row.Breed = fact.Breed;
        row.Client = fact.Client.Text ?? "";
        row.Search = DogSearch.Folded($"{row.Name} {row.Breed} {row.Client}");
        row.Coat = fact.Coat?.Value;
        row.IsGone = fact.IsGone;
        row.Told = JsonSerializer.Serialize(DogStories.Of(fact), FactJson.Options);
    }

    private async Task StartAsync(GroomStarted fact, Recorded told)
    {
        if (await db.Grooms.FindAsync(salon.Value, fact.Groom.Value) is not null)
            return;
        db.Grooms.Add(
            new GroomRow
            {
                SalonId = salon.Value,
                Id = fact.Groom.Value,
                Dog = fact.Dog.Value,
                By = fact.By.Value,
                Watcher = fact.Watcher?.Value,
                State = GroomState.Started,
                StartedAt = fact.At,
                RecordedAt = told.RecordedAt,
            }
        );
    }

    private async Task AbandonAsync(GroomAbandoned fact)
    {
        if (await db.Grooms.FindAsync(salon.Value, fact.Groom.Value) is { State: GroomState.Started } row)
            row.State = GroomState.Abandoned;
    }

    private async Task TellAsync(Groom groom, Recorded told, bool isNew)
    {
        var row = isNew ? null : await db.Grooms.FindAsync(salon.Value, groom.Id.Value);
        row ??= db
            .Grooms.Add(
                new GroomRow
                {
                    SalonId = salon.Value,
                    Id = groom.Id.Value,
                    RecordedAt = told.RecordedAt,
                }
            )
            .Entity;
        row.Dog = groom.Dog.Value;
        row.By = groom.By.Value;
        row.Watcher = groom.Watcher?.Value;
        row.State = GroomState.Told;
        row.StartedAt = groom.StartedAt;
        row.EndedAt = groom.EndedAt;
        row.Breed = groom.Breed;
        row.Coat = groom.Coat.Value;
        await NameDoersAsync(groom, isNew);
        if (await db.Dogs.FindAsync(salon.Value, groom.Dog.Value) is { } dog && !(dog.LastGroomAt > groom.EndedAt))
            dog.LastGroomAt = groom.EndedAt;
    }

    private async Task NameDoersAsync(Groom groom, bool isNew)
    {
        var doers = groom.Doers.Select(person => person.Value).ToHashSet();
        var named = isNew ? [] : await DoersAsync(groom.Id);
        db.GroomDoers.RemoveRange(named.Where(row => !doers.Contains(row.Person)));
        foreach (var person in doers)
        {
            var row = named.Find(one => one.Person == person) ?? NewDoer(groom.Id, person);
            row.EndedAt = groom.EndedAt;
            row.Watcher = groom.Watcher?.Value;
        }
    }

    private async Task<List<GroomDoerRow>> DoersAsync(GroomId groom)
    {
        await db.GroomDoers.Where(row => row.SalonId == salon.Value && row.Groom == groom.Value).LoadAsync();
        return [.. db.GroomDoers.Local.Where(row => row.Groom == groom.Value)];
    }

    private GroomDoerRow NewDoer(GroomId groom, Guid person) =>
        db
            .GroomDoers.Add(
                new GroomDoerRow
                {
                    SalonId = salon.Value,
                    Groom = groom.Value,
                    Person = person,
                }
            )
            .Entity;

    private async Task SignAsync(SignOff signed)
    {
        if (await db.GroomDoers.FindAsync(salon.Value, signed.Groom.Value, signed.Subject.Value) is not { } row)
            return;
        row.SignOff = signed.Id.Value;
        row.Senior = signed.Senior.Value;
        row.SignedAt = signed.SignedAt;
        row.IsLate = signed.IsLate;
        row.IsSuitable = IsSuitable(signed);
        row.IsDisputed = false;
    }

    private async Task AdmitAsync(LateSignOffAdmitted fact)
    {
        foreach (var row in (await DoersAsync(fact.Groom)).Where(row => row.SignOff == fact.SignOff.Value))
            row.IsLate = false;
    }

    private static bool IsSuitable(SignOff signed) =>
        SigningOff.VerdictOf(signed.Level, signed.Criteria, signed.NotSuitable, default, isCoat: true) == Verdict.Suitable;

    private async Task DisputeAsync(SignOffDisputed fact, Recorded told)
    {
        db.Disputes.Add(
            new DisputeRow
            {
                SalonId = salon.Value,
                SignOff = fact.SignOff.Value,
                Groom = fact.Groom.Value,
                By = fact.By.Value,
                At = told.RecordedAt,
            }
        );
        await MarkDisputedAsync(fact.Groom, fact.SignOff, isDisputed: true);
    }

    private async Task AnswerAsync(DisputeAnswered fact, Recorded told)
    {
        if (await db.Disputes.FindAsync(salon.Value, fact.SignOff.Value) is { } row)
            row.AnsweredAt ??= told.RecordedAt;
        await MarkDisputedAsync(fact.Groom, fact.SignOff, isDisputed: false);
    }

    private async Task MarkDisputedAsync(GroomId groom, SignOffId signed, bool isDisputed)
    {
        foreach (var row in (await DoersAsync(groom)).Where(row => row.SignOff == signed.Value))
            row.IsDisputed = isDisputed;
    }

    private async Task FlagAsync(GroomFlagged fact, Recorded told)
    {
        var row = await db.Flags.FindAsync(salon.Value, fact.Groom.Value, fact.Person.Value);
        if (row is null)
            row = db
                .Flags.Add(
                    new FlagRow
                    {
                        SalonId = salon.Value,
                        Groom = fact.Groom.Value,
                        Person = fact.Person.Value,
                    }
                )
                .Entity;
        if (fact.Skills.IsEmpty)
            db.Flags.Remove(row);
        row.At = told.RecordedAt;
        row.Skills = string.Join(',', fact.Skills.Select(skill => skill.Value));
        row.SpokenAt = null;
    }

    private async Task SpeakAsync(FlagSpokenAbout fact, Recorded told)
    {
        if (await db.Flags.FindAsync(salon.Value, fact.Groom.Value, fact.Person.Value) is { } row)
            row.SpokenAt = told.RecordedAt;
    }

    private async Task ReportAsync(IncidentReported fact)
    {
        var incident = fact.Incident;
        db.Incidents.Add(
            new IncidentRow
            {
                SalonId = salon.Value,
                Id = incident.Id.Value,
                Groom = incident.Groom.Value,
                Person = incident.Person.Value,
                Kind = (int)incident.Kind,
                Severity = (int)incident.Severity,
                IsCritical = incident.IsCritical,
                ReportedAt = incident.ReportedAt,
            }
        );
        if (await db.Grooms.FindAsync(salon.Value, incident.Groom.Value) is { } groom)
            groom.HasIncident = true;
    }

    private async Task ReviewAsync(IncidentReviewed fact)
    {
        if (await db.Incidents.FindAsync(salon.Value, fact.Review.Incident.Value) is { } row)
            row.ReviewedAt = fact.Review.ReviewedAt;
    }

    // The words go at once, so that whatever is read of the entry from here on is read without them.
    private async Task EraseAsync(WordsErased fact)
    {
        var entry = await db.Ledger.AsNoTracking().SingleAsync(row => row.SalonId == salon.Value && row.Seq == fact.Entry);
        var words = await db
            .Words.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.FactId == entry.FactId)
            .ToListAsync();
        foreach (var path in words.Select(row => row.Path).Where(path => Erasing.MayBeErased(entry.Kind, path)))
            await db
                .Words.Where(row => row.SalonId == salon.Value && row.FactId == entry.FactId && row.Path == path)
                .ExecuteUpdateAsync(set =>
                    set.SetProperty(row => row.Text, (string?)null).SetProperty(row => row.Key, (byte[]?)null)
                );
        if (entry.Kind == FactForms.CodeOf<DogDescribed>())
            await DescribeAnewAsync(entry.Subject!.Value);
    }

    private async Task DescribeAnewAsync(Guid dog)
    {
        var facts = await db
            .Ledger.Where(row => row.SalonId == salon.Value && row.Subject == dog)
            .ReadAsync(db, CancellationToken.None);
        await DescribeAsync(facts.Select(told => told.Fact).OfType<DogDescribed>().Last());
    }

    private async Task HandInAsync(AttemptHandedIn fact, Recorded told)
    {
        if (await db.Attempts.FindAsync(salon.Value, fact.Attempt.Value) is not null)
            return;
        db.Attempts.Add(
            new AttemptRow
            {
                SalonId = salon.Value,
                Id = fact.Attempt.Value,
                Person = fact.Person.Value,
                Module = fact.Module.Value,
                Edition = fact.Edition,
                IsRefresher = fact.IsRefresher,
                HandedInAt = fact.HandedInAt,
                RecordedAt = told.RecordedAt,
                HasPassed = fact.HasPassed,
                Seq = told.Seq,
            }
        );
    }

    private Task Tick(PresenceTicked fact, Recorded told)
    {
        db.Presences.Add(
            new PresenceRow
            {
                SalonId = salon.Value,
                Id = FactIds.Of(salon, told.Seq),
                Person = fact.Person.Value,
                Day = fact.Day,
                IsIn = fact.IsIn,
                RecordedAt = told.RecordedAt,
            }
        );
        return Task.CompletedTask;
    }

    private Task Read(RoomRead fact, Recorded told)
    {
        db.Readings.Add(
            new ReadingRow
            {
                SalonId = salon.Value,
                Id = FactIds.Of(salon, told.Seq),
                At = fact.Reading.At,
                RecordedAt = told.RecordedAt,
                Room = fact.Room,
                TenthsC = fact.Reading.TenthsC,
                HumidityPct = fact.Reading.HumidityPct,
            }
        );
        return Task.CompletedTask;
    }
}
