using Academy.Competence;
using Academy.Competence.DogChecks;
using Academy.Competence.Dogs;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;

namespace Academy.Web.Features.DogChecks;

/// <summary>What is asked about: a dog of the book or one described on the spot, its work, and the moment.</summary>
public sealed class DogCheckForm
{
    public Guid? Dog { get; set; }

    /// <summary>Set by the button: the form was filled in and an answer is wanted.</summary>
    public bool IsAsked { get; set; }

    /// <summary>No dog of the book: one described here.</summary>
    public bool IsDescribed { get; set; }

    public string? Breed { get; set; }

    public string? Coat { get; set; }

    public string? SecondCoat { get; set; }

    public string Age { get; set; } = nameof(AgeByLook.NotSaid);

    public string? Weight { get; set; }

    public string[] Hazards { get; set; } = [];

    public string[] Techniques { get; set; } = [];

    public bool Pelted { get; set; }

    public bool Breathing { get; set; }

    public bool MayVomit { get; set; }

    public string? On { get; set; }

    public string? Time { get; set; }

    /// <summary>The moment asked about: now unless a day and a time were given. Null where those cannot be read or lie ahead.</summary>
    public DateTimeOffset? MomentIn(TimeZoneInfo zone, DateTimeOffset now)
    {
        if (string.IsNullOrWhiteSpace(On) && string.IsNullOrWhiteSpace(Time))
            return now;
        if (Typed.Day(On) is not { } day || Typed.Clock(Time) is not { } clock)
            return null;
        var at = SalonDay.At(day, clock, zone);
        return at <= now ? at : null;
    }

    /// <summary>The dog described here.</summary>
    public Dog Described(SalonBook book, IReadOnlyCollection<Breed> breeds)
    {
        var breed = breeds.FirstOrDefault(known => string.Equals(known.Name, Breed?.Trim(), StringComparison.OrdinalIgnoreCase));
        var byBreed = breed is not null && HeatRisk.IsHeatProne(breed) ? [SkillBook.HeatProne] : Listed.Of<SkillCode>([]);
        return new Dog(
            default,
            string.IsNullOrWhiteSpace(Breed) ? "This dog" : $"This {Breed.Trim()}",
            Breed?.Trim() ?? "",
            CoatIn(book, Coat),
            CoatIn(book, SecondCoat),
            CodesIn(book, Hazards).Concat(byBreed).Distinct().ToListed(),
            BornOn: null,
            Enum.TryParse<AgeByLook>(Age, out var age) ? age : AgeByLook.NotSaid,
            Typed.Kilos(Weight)
        );
    }

    /// <summary>The question: the dog with the hazards seen today, and the work ticked, or what was done last time.</summary>
    public DogAsked AskedFor(Dog dog, Listed<SkillCode> usual) =>
        new(
            IsAsked && !IsDescribed
                ? dog with
                {
                    Hazards = dog.Hazards.Concat(Hazards.Select(code => new SkillCode(code))).Distinct().ToListed(),
                }
                : dog,
            IsAsked ? Techniques.Select(code => new SkillCode(code)).ToListed() : usual,
            Pelted,
            Breathing,
            MayVomit
        );

    /// <summary>Ticks what is asked, so that the form shows what the answer was given for.</summary>
    public void Tick(DogAsked asked, DateOnly day, HouseRules house)
    {
        Techniques = [.. asked.Techniques.Select(code => code.Value)];
        Hazards = [.. asked.Dog.HazardsOn(day, house).Select(code => code.Value)];
    }

    private static SkillCode? CoatIn(SalonBook book, string? code) =>
        code is not null && book.Find(new SkillCode(code)) is { Kind: SkillKind.Coat, IsRetired: false } coat ? coat.Code : null;

    private static IEnumerable<SkillCode> CodesIn(SalonBook book, IEnumerable<string> codes) =>
        codes.Select(code => book.Find(new SkillCode(code))).OfType<Skill>().Select(skill => skill.Code);
}
