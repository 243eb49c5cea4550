using CsCheck;

namespace Academy.Competence.Tests;

public class ListedTests
{
    [Fact]
    public void Two_lists_are_equal_when_their_items_are_in_the_same_order()
    {
        Listed<int> one = [1, 2, 3];
        Listed<int> same = [1, 2, 3];
        Listed<int> turned = [3, 2, 1];

        Assert.True(one == same && one != turned);
        Assert.True(one.Equals((object)same));
        Assert.False(one.Equals("1, 2, 3"));
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
    }

    [Fact]
    public void A_list_that_nobody_made_is_the_empty_one()
    {
        Listed<string> empty = [];

        Assert.Equal(empty, default);
        Assert.Equal(empty.GetHashCode(), default(Listed<string>).GetHashCode());
        Assert.True(default(Listed<string>).IsEmpty);
        Assert.Empty(default(Listed<string>));
    }

    [Fact]
    public void A_list_grows_at_its_end_and_the_old_one_stays_as_it_was()
    {
        Listed<int> one = [1];

        Assert.Equal([1, 2], one.With(2));
        Assert.Equal([1], one);
        Assert.Equal((2, 1, 2), (one.With(2).Count, one.With(2)[0], one.With(2)[1]));
    }

    [Fact]
    public void Records_that_hold_lists_are_equal_by_what_is_in_them() =>
        Assert.Equal(new Refused([new OwnerOnly(), new OwnWork()]), new Refused([new OwnerOnly(), new OwnWork()]));

    [Fact]
    public void Equal_lists_have_one_hash_and_unequal_ones_are_unequal_items() =>
        Gen.Select(Gen.Int[0, 3].List[0, 4], Gen.Int[0, 3].List[0, 4])
            .Sample(
                (left, right) =>
                {
                    var (one, other) = (left.ToListed(), right.ToListed());
                    return one == other == left.SequenceEqual(right)
                        && (one != other || one.GetHashCode() == other.GetHashCode());
                }
            );

    [Fact]
    public void No_words_are_no_words_however_they_came_about()
    {
        Assert.Equal(Words.None, default);
        Assert.Equal("", default(Words).Text);
        Assert.Equal(Words.None, Words.None with { Text = "" });
        Assert.True(new Words("  ").IsEmpty);
        Assert.Equal("Well done.", new Words("Well done.").Text);
    }
}
