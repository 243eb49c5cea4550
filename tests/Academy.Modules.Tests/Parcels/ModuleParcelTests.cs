using System.Collections.Immutable;
using System.IO.Compression;
using System.Text;
using Academy.Modules.Parcels;

namespace Academy.Modules.Tests.Parcels;

public class ModuleParcelTests
{
    private const int UnixSymbolicLink = unchecked((int)0xA1FF0000);

    private static readonly ModuleFiles[] Library =
    [
        .. ModuleLibrary.Load(Repository.Folder("modules")).Lessons.Select(ModuleFiles.Of),
    ];

    [Fact]
    public void The_whole_library_comes_out_of_a_parcel_as_it_went_in()
    {
        var (modules, refusals) = ModuleParcel.Unpack(ModuleParcel.Pack(Library));

        Assert.Empty(refusals);
        Assert.Equal(Library.Select(module => module.Name), modules.Select(module => module.Name));
        foreach (var (before, after) in Library.Zip(modules))
        {
            Assert.Equal(before.Text, after.Text);
            Assert.Equal(before.Pictures.Keys, after.Pictures.Keys);
            Assert.All(
                before.Pictures,
                picture => Assert.True(picture.Value.Span.SequenceEqual(after.Pictures[picture.Key].Span))
            );
        }
    }

    [Fact]
    public void An_edition_keeps_its_fingerprint_on_the_way()
    {
        var (modules, _) = ModuleParcel.Unpack(ModuleParcel.Pack(Library));

        Assert.Equal(
            ModuleLibrary.Load(Repository.Folder("modules")).Modules.Select(module => module.Hash),
            modules.Select(module => module.Read().Lesson!.Module.Hash)
        );
    }

    [Fact]
    public void The_same_modules_make_the_same_parcel() =>
        Assert.Equal(ModuleParcel.Pack(Library), ModuleParcel.Pack([.. Library.Reverse()]));

    [Fact]
    public void A_parcel_of_the_folder_itself_is_read_too() =>
        Assert.Equal(["towels"], ModuleParcel.Unpack(Zip(("modules/towels/module.md", "words"))).Modules.Select(one => one.Name));

    [Theory]
    [InlineData("../module.md")]
    [InlineData("towels/../../module.md")]
    [InlineData("/etc/module.md")]
    [InlineData("C:\\towels\\module.md")]
    [InlineData("towels\\module.md")]
    [InlineData("towels/module.md\n")]
    [InlineData("Towels/module.md")]
    [InlineData("towels/deeper/module.md")]
    [InlineData("towels/program.exe")]
    [InlineData("towels/.htaccess")]
    [InlineData("towels/page.html")]
    [InlineData("module.md")]
    public void A_name_that_points_elsewhere_refuses_the_whole_parcel(string name)
    {
        var (modules, refusals) = ModuleParcel.Unpack(Zip(("towels/module.md", "words"), (name, "words")));

        Assert.Empty(modules);
        Assert.Contains("nothing else. Take this out.", Assert.Single(refusals).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pointer_to_another_place_refuses_the_whole_parcel()
    {
        var parcel = Zip(entry => entry.ExternalAttributes = UnixSymbolicLink, ("towels/module.md", "/etc/passwd"));

        Assert.Contains("pointer", Assert.Single(ModuleParcel.Unpack(parcel).Refusals).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_small_file_that_unpacks_to_a_huge_one_is_cut_off_and_refused()
    {
        var bomb = Zip(("towels/module.md", new string('a', 300 * 1024 * 1024)));
        Assert.True(bomb.Length < ModuleParcel.LargestParcel);

        Assert.Contains("too large", Assert.Single(ModuleParcel.Unpack(bomb).Refusals).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Many_files_that_are_small_each_and_huge_together_are_refused()
    {
        var half = new string('a', 500 * 1024);
        var parcel = Zip([
            ("towels/module.md", "words"),
            .. Enumerable.Range(0, 200).Select(number => ($"towels/picture-{number}.png", half)),
        ]);

        Assert.NotEmpty(ModuleParcel.Unpack(parcel).Refusals);
    }

    [Fact]
    public void A_parcel_of_too_many_files_is_refused() =>
        Assert.Contains(
            "2000 are the most",
            Assert
                .Single(
                    ModuleParcel
                        .Unpack(Zip([.. Enumerable.Range(0, 2001).Select(number => ($"module-{number}/module.md", ""))]))
                        .Refusals
                )
                .Message,
            StringComparison.Ordinal
        );

    [Fact]
    public void The_same_file_twice_is_refused() =>
        Assert.Contains(
            "twice",
            Assert.Single(ModuleParcel.Unpack(Zip(("towels/module.md", "one"), ("towels/module.md", "two"))).Refusals).Message,
            StringComparison.Ordinal
        );

    [Fact]
    public void A_folder_without_a_text_is_refused() =>
        Assert.Equal("towels/module.md", Assert.Single(ModuleParcel.Unpack(Zip(("towels/press.svg", "<svg/>"))).Refusals).File);

    [Fact]
    public void A_text_that_is_not_in_UTF_8_is_refused()
    {
        using MemoryStream packed = new();
        using (ZipArchive zip = new(packed, ZipArchiveMode.Create, leaveOpen: true))
        using (var into = zip.CreateEntry("towels/module.md").Open())
            into.Write([0xFF, 0xFE, 0x80]);

        Assert.Contains("UTF-8", Assert.Single(ModuleParcel.Unpack(packed.ToArray()).Refusals).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_parcel_is_refused() =>
        Assert.Contains("no module", Assert.Single(ModuleParcel.Unpack(Zip()).Refusals).Message, StringComparison.Ordinal);

    [Fact]
    public void What_is_no_zip_file_is_refused()
    {
        Assert.Single(ModuleParcel.Unpack("not a zip file"u8.ToArray()).Refusals);
        Assert.Single(ModuleParcel.Unpack(ReadOnlyMemory<byte>.Empty).Refusals);
        var cut = ModuleParcel.Pack(Library);
        Assert.NotEmpty(ModuleParcel.Unpack(cut.AsMemory(0, cut.Length / 2)).Refusals);
    }

    [Fact]
    public void A_broken_byte_anywhere_never_throws()
    {
        var parcel = Zip(("towels/module.md", "some words that are packed"), ("towels/press.svg", "<svg/>"));
        for (var place = 0; place < parcel.Length; place++)
        {
            var broken = parcel.ToArray();
            broken[place] ^= 0xFF;
            var (modules, refusals) = ModuleParcel.Unpack(broken);
            Assert.True(modules.IsEmpty != refusals.IsEmpty);
        }
    }

    [Fact]
    public void What_comes_out_is_looked_through_like_a_folder()
    {
        var (lesson, findings) = new ModuleFiles(
            "towels",
            "<script>alert(1)</script>",
            ImmutableSortedDictionary<string, ReadOnlyMemory<byte>>.Empty
        ).Read();

        Assert.Null(lesson);
        Assert.NotEmpty(findings);
    }

    private static byte[] Zip(params (string Name, string Text)[] files) => Zip(_ => { }, files);

    private static byte[] Zip(Action<ZipArchiveEntry> change, params (string Name, string Text)[] files)
    {
        using MemoryStream packed = new();
        using (ZipArchive zip = new(packed, ZipArchiveMode.Create, leaveOpen: true, Encoding.UTF8))
            foreach (var (name, text) in files)
            {
                var entry = zip.CreateEntry(name);
                change(entry);
                using var into = entry.Open();
                into.Write(Encoding.UTF8.GetBytes(text));
            }
        return packed.ToArray();
    }
}
