using Academy.Modules;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;

namespace Academy.Web.Features.Study;

/// <summary>What stands beside a lesson for its reader.</summary>
/// <param name="GoOn">Where she stopped; null where there is no place to go on from.</param>
/// <param name="LastTry">What a second failure would do; null where none was before.</param>
public sealed record Beside(GoOnLine? GoOn, string? LastTry);

/// <summary>The reader's place in a lesson, and what she should know before its quiz.</summary>
public sealed class BesideQueries(Who who, ReadingPlaces places, LastTryQueries lastTry, TimeProvider clock)
{
    public async Task<Beside> OfAsync(Lesson lesson, ModuleStudy study, CancellationToken stop)
    {
        var place = await places.FindAsync(who.Salon, who.Person.Id, lesson.Module.Name, stop);
        DateTimeOffset? handedInAt = study.HandedIn is [.., var last] ? last.Taken.HandedInAt : null;
        return new(GoOnLine.Of(place, lesson, handedInAt, who.Time), await lastTry.OfAsync(who.Person.Id, study.Found, stop));
    }

    /// <summary>Keeps the place; null where the lesson, or this part of it, is not there.</summary>
    public async Task<Part?> StopAtAsync(Lesson? lesson, string? id)
    {
        if (lesson?.Parts.FirstOrDefault(part => part.Id == id) is not { } part)
            return null;
        await places.KeepAsync(who.Salon, who.Person.Id, new(lesson.Module.Name, part.Id, clock.GetUtcNow()));
        return part;
    }
}
