using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Skills;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

public class DeclarationTests
{
    // declared for        begins at, in UTC
    [Theory]
    [InlineData("2026-06-15", "2026-06-14 23:00Z")] // midnight of British Summer Time
    [InlineData("2026-01-15", "2026-01-15 00:00Z")] // midnight of Greenwich Mean Time
    public void A_declaration_holds_from_the_first_moment_of_its_day(string day, string at)
    {
        var told = new ExperienceDeclared(
            DecisionNumber(1),
            Rosa.Id,
            SkillBook.Wool,
            Day(day),
            ThresholdVersion: 1,
            Said("Years.")
        );
        var of = Assert.Single(Paths.Of(told, London));

        Assert.Equal(new StepOf(Rosa.Id, SkillBook.Wool, of.Step), of);
        Assert.Equal((StepKind.Declared, Day(day), At(at)), (of.Step.Kind, of.Step.Day, of.Step.At));
    }

    [Fact]
    public void Work_elsewhere_stands_once_for_each_groom_at_the_beginning_of_its_day()
    {
        var told = new WorkElsewhere(
            DecisionNumber(2),
            Rosa.Id,
            SkillBook.Wool,
            Day("2026-06-15"),
            Grooms: 3,
            Said("Her last salon.")
        );

        Assert.Equal(
            Enumerable.Repeat((StepKind.Elsewhere, At("2026-06-14 23:00Z")), 3),
            Paths.Of(told, London).Select(of => (of.Step.Kind, of.Step.At))
        );
    }
}
