using Academy.Storage.Sqlite;

namespace Academy.Storage.Tests.Sqlite;

public sealed class ModuleSearchTests : IAsyncLifetime, IDisposable
{
    private readonly SqliteModuleSearch _search = new();

    public async ValueTask InitializeAsync() =>
        await _search.AddAsync(
            [
                new(
                    "heat",
                    "Heat stroke",
                    [
                        new("", "", "When a dog is too hot."),
                        new("part-cool", "Cool first", "Pour water over the dog. Fan it. A vet follows."),
                    ]
                ),
                new(
                    "nails",
                    "Nails",
                    [
                        new("", "", "Clipping nails short."),
                        new("part-pate", "À la carte", "A naïve café clip. The vet may clip it."),
                    ]
                ),
                new("own", "Heat stroke, ours", [new("part-door", "The door", "Water stands at the door.")]),
            ],
            TestContext.Current.CancellationToken
        );

    [Theory]
    [InlineData("water", "heat")]
    [InlineData("WATER vet", "heat")] // all of them, in any order
    [InlineData("vet water", "heat")]
    [InlineData("cafe", "nails")] // accents make no difference, neither here
    [InlineData("càfé", "nails")] // nor there
    [InlineData("clips", "nails")] // nor do endings
    [InlineData("wat", "heat")] // the last word may be a beginning
    [InlineData("stroke", "heat")] // titles
    [InlineData("carte", "nails")] // headings
    public async Task Words_are_found_however_they_are_typed(string typed, string hash) =>
        Assert.Equal([hash], (await FindAsync(typed, "heat", "nails")).Select(found => found.ContentHash).Distinct());

    [Fact]
    public async Task Only_the_editions_that_are_named_are_found()
    {
        Assert.Equal(["heat"], (await FindAsync("water", "heat", "nails")).Select(found => found.ContentHash));
        Assert.Equal(["own"], (await FindAsync("water", "own", "nails")).Select(found => found.ContentHash));
        Assert.Empty(await FindAsync("water", "nails"));
        Assert.Empty(await FindAsync("water"));
    }

    [Fact]
    public async Task What_was_looked_for_is_marked_in_title_heading_and_excerpt()
    {
        var found = Assert.Single(await FindAsync("cool dog", "heat"));

        Assert.Equal("part-cool", found.Part);
        Assert.Equal([new("Cool", true), new(" first", false)], found.Heading);
        Assert.Contains(new("dog", true), found.Excerpt);
        Assert.StartsWith(
            "Pour water over the dog.",
            string.Concat(found.Excerpt.Select(run => run.Words)),
            StringComparison.Ordinal
        );
    }

    // Everything that means something to the index, and letters that mean something nowhere.
    [Theory]
    [InlineData("\"")]
    [InlineData("\"water")]
    [InlineData("water AND")]
    [InlineData("NOT water")]
    [InlineData("NEAR(water dog, 2)")]
    [InlineData("title:water OR words:*")]
    [InlineData("wat*er^2 - + ( ) { } [ ]")]
    [InlineData("'; DROP TABLE passages; --")]
    [InlineData("%_\\")]
    [InlineData("\0\u0002\u0003")]
    [InlineData("😀 ﷺ ʼ ː ͅ ⅷ ½ ª")]
    [InlineData("水 พระ ﬁ ß")]
    [InlineData("")]
    [InlineData("   ")]
    public async Task No_sign_in_what_was_typed_is_ever_an_error(string typed)
    {
        await FindAsync(typed, "heat", "nails", "own");

        Assert.NotEmpty(await FindAsync("water", "heat"));
    }

    [Fact]
    public async Task A_very_long_question_is_cut_to_its_first_words() =>
        Assert.Empty(await FindAsync(string.Join(' ', Enumerable.Range(0, 100_000)), "heat"));

    [Fact]
    public async Task An_edition_that_is_added_twice_is_found_once()
    {
        await InitializeAsync();

        Assert.Single(await FindAsync("fan", "heat"));
    }

    public ValueTask DisposeAsync()
    {
        Dispose();
        return ValueTask.CompletedTask;
    }

    public void Dispose() => _search.Dispose();

    private Task<IReadOnlyList<FoundPassage>> FindAsync(string typed, params string[] hashes) =>
        _search.FindAsync(SearchWords.Of(typed), hashes, most: 20, TestContext.Current.CancellationToken);
}
