using Academy.Competence.Dogs;
using Academy.Competence.Skills;

namespace Academy.Competence.Tests.Dogs;

// Coat and flat faces: the breed table, sources in src/Academy.Competence/Dogs/README.md. Heavy coat: our own rule, common
// practice, no published source. Heat-prone: Hall, Carter and O'Neill 2020, Scientific Reports 10:9128.
public class BreedSuggestionTests
{
    [Fact]
    public void A_chow_chow_suggests_double_a_heavy_coat_and_heat()
    {
        var suggested = BreedSuggestion.Of("chow chow");

        Assert.Equal(new BreedSuggestion(SkillBook.Double, [SkillBook.HeavyCoat, SkillBook.HeatProne]), suggested);
    }

    [Fact]
    public void A_pug_suggests_smooth_a_flat_face_and_heat() =>
        Assert.Equal(
            new BreedSuggestion(SkillBook.Smooth, [SkillBook.FlatFaced, SkillBook.HeatProne]),
            BreedSuggestion.Of("Pug")
        );

    [Fact]
    public void A_toy_poodle_suggests_wool_and_no_hazard() =>
        Assert.Equal(new BreedSuggestion(SkillBook.Wool, []), BreedSuggestion.Of("Poodle (Toy)"));

    [Fact]
    public void A_name_in_free_words_suggests_no_coat_but_is_known_by_its_other_name() =>
        Assert.Equal(new BreedSuggestion(null, [SkillBook.HeatProne]), BreedSuggestion.Of("English Bulldog"));

    [Fact]
    public void A_cross_that_nobody_knows_suggests_nothing() =>
        Assert.Equal(new BreedSuggestion(null, []), BreedSuggestion.Of("something with ears"));
}
