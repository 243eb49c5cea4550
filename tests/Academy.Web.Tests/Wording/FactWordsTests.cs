using System.Runtime.CompilerServices;
using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Facts;
using Academy.Competence.Skills;
using Academy.Web.Wording;

namespace Academy.Web.Tests.Wording;

public sealed class FactWordsTests
{
    [Fact]
    public void Every_kind_of_fact_has_a_word_of_its_own()
    {
        var facts = typeof(Fact).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Fact)) && !type.IsAbstract).ToList();
        var words = facts.ConvertAll(type => Say.Kind((Fact)RuntimeHelpers.GetUninitializedObject(type)));

        Assert.True(facts.Count >= 29);
        Assert.Equal(words.Distinct(StringComparer.Ordinal), words);
    }

    [Fact]
    public void A_clearance_says_its_version_its_limits_and_whether_it_is_against_the_rules()
    {
        var given = new ClearanceGiven(
            new DecisionId(Guid.Empty),
            new DecisionId(Guid.Empty),
            Sample.Pim,
            SkillBook.Wool,
            Sample.Now,
            ThresholdVersion: 3,
            new Limits(UpToKg: 20),
            IsException: true,
            new Words("I watched him twice.")
        );

        Assert.Equal(
            "Cleared to do it alone, under version 3, against the rules; up to 20 kg.",
            Say.Decision(given, Sample.Names)
        );
        Assert.Equal(
            "Cleared to do it alone, under version 3.",
            Say.Decision(given with { IsException = false, Limits = Limits.None }, Sample.Names)
        );
        Assert.Null(Say.Decision(new PersonLeft(Sample.Pim, Sample.March12), Sample.Names));
    }
}
