using System.Reflection;
using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Storage.Ledgers;

namespace Academy.Storage.Tests.Ledgers;

public sealed class FactFormsTests
{
    public static TheoryData<string> Samples => [.. FactSamples.All.Keys];

    [Fact]
    public void Every_fact_of_the_trade_has_a_ledger_form_and_a_sample_here()
    {
        var facts = typeof(Fact)
            .Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Fact)) && !type.IsAbstract)
            .ToHashSet();

        Assert.True(facts.Count >= 29, $"{facts.Count} facts");
        Assert.Equal(facts, FactForms.Known.Select(form => form.Type).ToHashSet());
        Assert.Equal(facts, FactSamples.All.Values.Select(fact => fact.GetType()).ToHashSet());
    }

    [Fact]
    public void No_two_facts_share_a_code() => Assert.Distinct(FactForms.Known.Select(form => form.Code));

    [Theory]
    [MemberData(nameof(Samples))]
    public void What_was_written_reads_back_equal(string sample)
    {
        var fact = FactSamples.All[sample];

        var spoken = FactForms.Write(fact);
        var kept = CanonicalJson.Of(spoken.Data);
        var read = FactForms.Read(FactForms.Of(fact).Code, CanonicalJson.Parse(kept)!.AsObject(), spoken.Words);

        Assert.Equal(fact, read);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_form_once_written_never_changes(string sample)
    {
        var fact = FactSamples.All[sample];

        var written = $"{FactForms.Of(fact).Code} {CanonicalJson.Of(FactForms.Write(fact).Data)}";

        // Entries of this shape stand in salons' ledgers. A fact that must change gets a new code; its old line stays.
        Assert.Equal(Kept.Value[sample], written);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void No_word_that_anybody_typed_stands_in_the_ledger(string sample)
    {
        var fact = FactSamples.All[sample];

        var spoken = FactForms.Write(fact);

        Assert.DoesNotContain("typed", CanonicalJson.Of(spoken.Data), StringComparison.Ordinal);
        Assert.All(spoken.Words.Values, text => Assert.Contains("typed", text, StringComparison.Ordinal));
        Assert.Equal(WordsIn(fact).Count(words => !string.IsNullOrEmpty(words.Text)), spoken.Words.Count);
    }

    [Fact]
    public void A_fact_whose_words_were_erased_reads_back_without_them()
    {
        var said = new SalonDescribed(new Words("typed name"), new Words("*"), Words.None);
        var spoken = FactForms.Write(said);

        Assert.Equal(said, FactForms.Read("salon.described", spoken.Data, spoken.Words));
        Assert.Equal(
            new SalonDescribed(Words.None, Words.None, Words.None),
            FactForms.Read("salon.described", spoken.Data, new Dictionary<string, string>())
        );
    }

    [Fact]
    public void A_code_or_a_member_of_a_later_version_is_refused_not_guessed()
    {
        var data = FactForms.Write(FactSamples.All["PersonLeft"]).Data;
        data["later"] = 1;

        Assert.Throws<FormatException>(() => FactForms.Read("person.promoted", [], new Dictionary<string, string>()));
        Assert.Throws<System.Text.Json.JsonException>(() =>
            FactForms.Read("person.left", data, new Dictionary<string, string>())
        );
    }

    private static readonly Lazy<Dictionary<string, string>> Kept = new(() =>
        File.ReadLines(TestFiles.Path("ledger-forms.txt"))
            .Select(line => line.Split('\t'))
            .ToDictionary(pair => pair[0], pair => pair[1])
    );

    private static IEnumerable<Words> WordsIn(object? record) =>
        record switch
        {
            null or string => [],
            Words words => [words],
            System.Collections.IEnumerable items => items.Cast<object?>().SelectMany(WordsIn),
            _ when record.GetType().Namespace?.StartsWith("Academy.", StringComparison.Ordinal) == true => record
                .GetType()
                .GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Where(property => property.GetIndexParameters().Length == 0 && property.CanWrite)
                .SelectMany(property => WordsIn(property.GetValue(record))),
            _ => [],
        };
}
