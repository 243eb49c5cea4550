using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Quizzes;
using Academy.Competence.Skills;

namespace Academy.Web.Demo;

/// <summary>Sixty dogs of the demo salon: names of our own, breeds as they come through a door by the sea.</summary>
internal static class DemoDogs
{
    private static readonly string[] Names =
    [
        "Bramble",
        "Pickle",
        "Otter",
        "Juniper",
        "Teasel",
        "Barnaby",
        "Winkle",
        "Marrow",
        "Sorrel",
        "Biscuit",
        "Tansy",
        "Kelp",
        "Rowan",
        "Dumpling",
        "Fennel",
        "Gannet",
        "Hattie",
        "Isla",
        "Jasper",
        "Kipper",
        "Limpet",
        "Mabel",
        "Nettle",
        "Olive",
        "Pebble",
        "Quince",
        "Rufus",
        "Saffron",
        "Tilly",
        "Umber",
        "Velvet",
        "Wilf",
        "Yarrow",
        "Alder",
        "Bilberry",
        "Cockle",
        "Dulse",
        "Ember",
        "Flint",
        "Gorse",
        "Harbour",
        "Ivy",
        "Jetty",
        "Kittiwake",
        "Lobelia",
        "Mussel",
        "Nimbus",
        "Oakum",
        "Puffin",
        "Rigger",
        "Shingle",
        "Thrift",
        "Urchin",
        "Vesper",
        "Whelk",
        "Anker",
        "Bosun",
        "Cinder",
        "Dabble",
        "Eider",
    ];

    private static readonly (string Breed, SkillCode Coat, SkillCode? Second, int Kg, SkillCode[] Hazards)[] Kinds =
    [
        ("Labrador Retriever", SkillBook.Smooth, null, 31, []),
        ("Golden Retriever", SkillBook.Double, null, 32, [SkillBook.HeavyCoat, SkillBook.HeatProne]),
        ("Border Collie", SkillBook.Double, null, 18, []),
        ("Cairn Terrier", SkillBook.Wire, null, 8, []),
        ("Yorkshire Terrier", SkillBook.Silky, null, 4, []),
        ("Cockapoo", SkillBook.Wool, null, 11, []),
        ("English Cocker Spaniel", SkillBook.Combination, null, 14, []),
        ("Shih Tzu", SkillBook.Silky, null, 7, [SkillBook.FlatFaced]),
        ("Beagle", SkillBook.Smooth, null, 13, []),
        ("German Shepherd Dog", SkillBook.Double, null, 36, [SkillBook.HeavyCoat]),
        ("Poodle (Miniature)", SkillBook.Wool, null, 8, []),
        ("Irish Setter", SkillBook.Combination, null, 28, []),
        ("Border Terrier", SkillBook.Wire, null, 6, []),
        ("Pug", SkillBook.Smooth, null, 8, [SkillBook.FlatFaced, SkillBook.HeatProne]),
        ("Maltese", SkillBook.Silky, null, 4, []),
        ("Shetland Sheepdog", SkillBook.Double, null, 9, []),
        ("Bichon Frise", SkillBook.Wool, null, 6, []),
        ("Cavalier King Charles Spaniel", SkillBook.Combination, null, 8, [SkillBook.HeatProne]),
        ("Staffordshire Bull Terrier", SkillBook.Smooth, null, 16, []),
        ("Newfoundland", SkillBook.Double, null, 62, [SkillBook.HeavyCoat, SkillBook.FiftyKilos]),
        ("Labradoodle", SkillBook.Wool, null, 25, []),
        ("English Springer Spaniel", SkillBook.Combination, null, 21, [SkillBook.HeatProne]),
        ("Havanese", SkillBook.Silky, null, 5, []),
        ("Greyhound", SkillBook.Smooth, null, 30, [SkillBook.HeatProne]),
    ];

    /// <summary>The dogs as they are on a day: three very old, one with a heart condition, one nervous, one whose age nobody knows.</summary>
    public static Dog[] On(DateOnly today)
    {
        var chance = new SplitMix64(60);
        return [.. Names.Select((name, i) => Make(name, i, chance, today))];
    }

    private static Dog Make(string name, int i, SplitMix64 chance, DateOnly today)
    {
        var kind = Kinds[i % Kinds.Length];
        var born = today.AddDays(-(400 + chance.Below(2400)) - (i % 17 == 3 ? 1900 : 0));
        var hazards = kind.Hazards.Concat(Special(i)).ToListed();
        return new Dog(
            new DogId(new Guid(0x0D06, 0, 0x7000, 0x80, 0, 0, 0, 0, 0, (byte)(i / 100), (byte)(i % 100))),
            name,
            kind.Breed,
            kind.Coat,
            kind.Second,
            hazards,
            i == 33 ? null : born,
            AgeByLook.NotSaid,
            kind.Kg,
            Client: i % 3 == 0 ? $"Card {100 + i}" : ""
        );
    }

    private static SkillCode[] Special(int i) =>
        i switch
        {
            10 => [SkillBook.Heart],
            21 or 44 => [SkillBook.Nervous],
            29 => [SkillBook.BiteHistory, SkillBook.Muzzled],
            _ => [],
        };
}
