using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features;

/// <summary>Dogs and grooms of a test salon, kept without a page.</summary>
internal static class Floor
{
    /// <summary>Biscuit: a wire-coated terrier of nine kilos, four years old.</summary>
    public static async Task<Dog> MeetAsync(this PortalHost portal, Cast cast, Func<Dog, Dog>? but = null)
    {
        var biscuit = new Dog(
            new DogId(portal.New()),
            "Biscuit",
            "Border Terrier",
            SkillBook.Wire,
            SecondCoat: null,
            Hazards: [],
            BornOn: portal.Today.AddYears(-4),
            AgeByLook.NotSaid,
            WeightKg: 9
        );
        var dog = but is null ? biscuit : but(biscuit);
        await portal.KeepAsync(cast.Salon, DogKeeping.Describe(dog, portal.Today), cast.Owner);
        return dog;
    }

    /// <summary>A whole bath and brush of this dog, told by its groomer an hour after it began.</summary>
    public static async Task<Groom> GroomAsync(
        this PortalHost portal,
        Cast cast,
        Dog dog,
        Person by,
        Person? watcher,
        Func<Groom, Groom>? but = null
    )
    {
        var plain = new Groom(
            new GroomId(portal.New()),
            dog.Id,
            by.Id,
            watcher?.Id,
            portal.Now.AddMinutes(-60),
            portal.Now,
            dog.Breed,
            dog.Coat ?? SkillBook.Smooth,
            dog.SecondCoat,
            CoatCondition.SomeTangles,
            by.Id,
            [new Part(SkillBook.Bath, by.Id), new Part(SkillBook.Brushing, by.Id)],
            Blades: [],
            dog.HazardsOn(portal.Today, new()),
            Consents: [],
            Checks: [],
            Signs: [],
            Room: null,
            EndedEarly: false,
            Phrases: [],
            Words.None
        );
        var told = but is null ? plain : but(plain);
        await portal.KeepAsync(cast.Salon, Logging.Log(told, earlier: null, by, portal.Now, Cast.Zone), by);
        return told;
    }

    /// <summary>The dog is on the table.</summary>
    public static async Task<GroomId> StartAsync(this PortalHost portal, Cast cast, Dog dog, Person by, Person? watcher)
    {
        var groom = new GroomId(portal.New());
        await portal.KeepAsync(cast.Salon, Logging.Start(groom, dog.Id, by, watcher?.Id, portal.Now, portal.Now, Cast.Zone), by);
        return groom;
    }
}
