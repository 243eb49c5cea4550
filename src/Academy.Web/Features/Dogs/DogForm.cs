using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Mvc.ModelBinding;

namespace Academy.Web.Features.Dogs;

/// <summary>A dog as somebody types it: everything may be unreadable, and comes back as it was typed.</summary>
public sealed class DogForm
{
    public Guid Operation { get; set; }

    public Guid Dog { get; set; }

    public long Version { get; set; }

    public string? Name { get; set; }

    public string? Breed { get; set; }

    /// <summary>The breed chosen among those that the typed words may mean.</summary>
    public string? Meant { get; set; }

    public string? Coat { get; set; }

    public string? SecondCoat { get; set; }

    public IList<string> Hazards { get; set; } = [];

    public string? Born { get; set; }

    public string Age { get; set; } = nameof(AgeByLook.NotSaid);

    public string? Weight { get; set; }

    public string? Client { get; set; }

    public static DogForm Empty(Guid dog, Guid operation) => new() { Dog = dog, Operation = operation };

    public static DogForm Of(Dog dog, long version, Guid operation) =>
        new()
        {
            Operation = operation,
            Dog = dog.Id.Value,
            Version = version,
            Name = dog.Name,
            Breed = dog.Breed,
            Coat = dog.Coat?.Value,
            SecondCoat = dog.SecondCoat?.Value,
            Hazards = [.. dog.Hazards.Select(hazard => hazard.Value)],
            Born = dog.BornOn?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
            Age = dog.Age.ToString(),
            Weight = dog.WeightKg?.ToString(System.Globalization.CultureInfo.InvariantCulture),
            Client = dog.Client,
        };

    /// <summary>
    /// Takes the breed that was meant and ticks what is usual for it: its coat where none was chosen yet, and its hazards.
    /// </summary>
    public void TakeSuggestion()
    {
        Breed = string.IsNullOrEmpty(Meant) ? Breed : Meant;
        Meant = null;
        var suggested = BreedSuggestion.Of(Breed ?? "");
        Coat = string.IsNullOrEmpty(Coat) ? suggested.Coat?.Value : Coat;
        Hazards = [.. Hazards.Union(suggested.Hazards.Select(hazard => hazard.Value), StringComparer.Ordinal)];
    }

    /// <summary>The dog, as far as it can be read; what cannot is said beside its field.</summary>
    public Dog Read(SalonBook book, bool isGone, ModelStateDictionary wrong)
    {
        Limit(wrong, nameof(Name), "Name", Name, 60);
        Limit(wrong, nameof(Breed), "Breed", Breed, 80);
        Limit(wrong, nameof(Client), "Surname or reference", Client, 60);
        if (string.IsNullOrWhiteSpace(Name))
            Say(wrong, nameof(Name), "Name: write what the dog is called");
        if (string.IsNullOrWhiteSpace(Breed) && string.IsNullOrWhiteSpace(Meant))
            Say(wrong, nameof(Breed), "Breed: write the breed or cross, or “cross” if nobody knows");
        return new Dog(
            new DogId(Dog),
            Name?.Trim() ?? "",
            (string.IsNullOrWhiteSpace(Meant) ? Breed : Meant)?.Trim() ?? "",
            Skill(book, SkillKind.Coat, Coat, nameof(Coat), "Coat", wrong),
            Skill(book, SkillKind.Coat, SecondCoat, nameof(SecondCoat), "Second coat", wrong),
            Hazards.Distinct(StringComparer.Ordinal).Select(Hazard).OfType<SkillCode>().ToListed(),
            Read(Born, Typed.Day, nameof(Born), "Born: write a date such as 14/7/2019, or leave it empty", wrong),
            Chosen.Of<AgeByLook>(Age) ?? AgeByLook.NotSaid,
            Read(Weight, Typed.Kilos, nameof(Weight), "Weight: write whole kilograms, or leave it empty", wrong),
            Client?.Trim() ?? "",
            isGone
        );

        SkillCode? Hazard(string code) => Skill(book, SkillKind.Hazard, code, nameof(Hazards), "Hazards", wrong);
    }

    private static SkillCode? Skill(
        SalonBook book,
        SkillKind kind,
        string? code,
        string field,
        string label,
        ModelStateDictionary wrong
    )
    {
        if (string.IsNullOrEmpty(code))
            return null;
        if (book.Find(new SkillCode(code)) is { } skill && skill.Kind == kind)
            return skill.Code;
        Say(wrong, field, $"{label}: choose from the list");
        return null;
    }

    private static T? Read<T>(string? typed, Func<string?, T?> read, string field, string otherwise, ModelStateDictionary wrong)
        where T : struct
    {
        var value = read(typed);
        if (value is null && !string.IsNullOrWhiteSpace(typed))
            Say(wrong, field, otherwise);
        return value;
    }

    private static void Limit(ModelStateDictionary wrong, string field, string label, string? typed, int most)
    {
        if (typed?.Length > most)
            Say(wrong, field, $"{label}: at most {most} letters");
    }

    private static void Say(ModelStateDictionary wrong, string field, string words) =>
        wrong.AddModelError($"Form.{field}", words);
}
