using Academy.Architecture.Tests.Planted.Web.Wording;
using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Standings;
using Academy.Storage.Ledgers;
using Academy.Web.Wording;

namespace Academy.Architecture.Tests;

/// <summary>Every reason has words, every fact a form, and every type a name that says what it is.</summary>
public class WordsTests
{
    private static readonly string[] s_emptyWords =
    [
        "Service",
        "Manager",
        "Helper",
        "Util",
        "Utils",
        "Utility",
        "Processor",
        "Handler",
        "Dto",
        "Info",
        "Data",
        "Base",
        "Impl",
    ];

    private static readonly Border<Part> s_namesSaySomething = new(
        part => part.IsWritten,
        part =>
            s_emptyWords
                .Where(word => part.Name.EndsWith(word, StringComparison.Ordinal))
                .Select(word => $"{part} ends in {word}: what is it?")
    );

    private static readonly Border<Part> s_everyReasonHasWords = WordsFor(typeof(Reason));
    private static readonly Border<Part> s_everyRuleHasWords = WordsFor(typeof(Finding));

    private static readonly Border<IReadOnlyCollection<FactForm>> s_everyFactHasAForm = new(
        _ => true,
        forms => Family(typeof(Fact)).Except(forms.Select(form => form.Type)).Select(fact => $"{fact.Name} has no ledger form")
    );

    [Fact]
    public void Every_reason_has_words()
    {
        Assert.True(Family(typeof(Reason)).Count() >= 75);
        s_everyReasonHasWords.Holds([Speaker()], atLeast: 1);
        s_everyReasonHasWords.Catches(House.Planted(typeof(SaysLittle)));
    }

    [Fact]
    public void Every_rule_of_a_standing_has_words()
    {
        Assert.True(Family(typeof(Finding)).Count() >= 7);
        s_everyRuleHasWords.Holds([Speaker()], atLeast: 1);
        s_everyRuleHasWords.Catches(House.Planted(typeof(SaysLittle)));
    }

    [Fact]
    public void Every_fact_has_a_ledger_form()
    {
        Assert.True(Family(typeof(Fact)).Count() >= 28);
        s_everyFactHasAForm.Holds([FactForms.Known], atLeast: 1);
        s_everyFactHasAForm.Catches([.. FactForms.Known.Skip(1)]);
    }

    [Fact]
    public void No_code_in_the_ledger_means_two_facts() =>
        Assert.Equal(FactForms.Known.Count, FactForms.Known.Select(form => form.Code).Distinct(StringComparer.Ordinal).Count());

    [Fact]
    public void No_name_ends_in_an_empty_word()
    {
        s_namesSaySomething.Holds(House.Parts, atLeast: 400);
        s_namesSaySomething.Catches(House.Planted<PettingHelper>());
    }

    private static Part Speaker() => House.Parts.Single(part => part.Type == typeof(Say));

    private static IEnumerable<Type> Family(Type family) =>
        House.Competence.GetTypes().Where(type => type.IsSubclassOf(family) && !type.IsAbstract);

    private static Border<Part> WordsFor(Type family) =>
        new(
            _ => true,
            part =>
                Family(family)
                    .Where(type => part.Uses.All(use => use.Type != type.FullName))
                    .Select(type => $"{part} has no words for {type.Name}")
        );
}
