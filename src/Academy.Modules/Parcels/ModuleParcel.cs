using System.Collections.Immutable;
using System.IO.Compression;
using System.Text;
using Academy.Competence;
using Academy.Modules.Reading;

namespace Academy.Modules.Parcels;

/// <summary>Modules in one zip file, a folder each, as they lie in the library: to keep elsewhere, and to give away.</summary>
public static class ModuleParcel
{
    /// <summary>The largest parcel, in bytes as it arrives.</summary>
    public const int LargestParcel = 20 * 1024 * 1024;

    private const int LargestUnpacked = 64 * 1024 * 1024;
    private const int MostFiles = 2000;
    private const int SymbolicLink = 0xA000;
    private static readonly DateTimeOffset Always = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The modules as a zip file; the same modules give the same bytes.</summary>
    public static byte[] Pack(IEnumerable<ModuleFiles> modules)
    {
        using MemoryStream packed = new();
        using (ZipArchive zip = new(packed, ZipArchiveMode.Create, leaveOpen: true, Encoding.UTF8))
            foreach (var module in modules.OrderBy(module => module.Name, StringComparer.Ordinal))
            {
                Put(zip, $"{module.Name}/{ModuleFiles.TextFile}", Encoding.UTF8.GetBytes(module.Text));
                foreach (var (file, bytes) in module.Pictures)
                    Put(zip, $"{module.Name}/{file}", bytes.Span);
            }
        return packed.ToArray();
    }

    /// <summary>The modules of a zip file, or every reason for which the whole parcel is refused.</summary>
    /// <param name="parcel">The file as it arrived. Nothing of it is written anywhere, so a name in it can point nowhere.</param>
    /// <remarks>
    /// What a header says of a size is not believed: the bytes are counted as they come. The modules themselves are looked through by
    /// <see cref="ModuleFiles.Read"/>.
    /// </remarks>
    public static (Listed<ModuleFiles> Modules, Listed<Finding> Refusals) Unpack(ReadOnlyMemory<byte> parcel)
    {
        Refusals refusals = new();
        if (parcel.Length > LargestParcel)
            refusals.Add(
                "",
                $"The file has {parcel.Length / (1024 * 1024)} MB; {LargestParcel / (1024 * 1024)} MB are the most."
            );
        else
            try
            {
                return Unpacked(parcel, refusals);
            }
            catch (Exception reason)
                when (reason is InvalidDataException or EndOfStreamException or NotSupportedException or IOException)
            {
                refusals.Add("", "The file is not a zip file that can be read. Make it again, without a password.");
            }
        return ([], refusals.All);
    }

    private static (Listed<ModuleFiles>, Listed<Finding>) Unpacked(ReadOnlyMemory<byte> parcel, Refusals refusals)
    {
        using ZipArchive zip = new(new MemoryStream(parcel.ToArray(), writable: false), ZipArchiveMode.Read);
        if (zip.Entries.Count > MostFiles)
        {
            refusals.Add("", $"There are {zip.Entries.Count} files in it; {MostFiles} are the most.");
            return ([], refusals.All);
        }
        var places = zip
            .Entries.Where(entry => !IsFolder(entry))
            .Select(entry => Place.Of(entry, refusals))
            .OfType<Place>()
            .ToArray();
        foreach (var twice in places.GroupBy(place => (place.Module, place.File)).Where(same => same.Count() > 1))
            refusals.Add($"{twice.Key.Module}/{twice.Key.File}", "The file is in it twice. Keep one.");
        var left = LargestUnpacked;
        var read = places.Where(_ => refusals.None).Select(place => (place, Bytes: place.Bytes(refusals, ref left))).ToArray();
        foreach (
            var module in places
                .GroupBy(place => place.Module)
                .Where(files => files.All(file => file.File != ModuleFiles.TextFile))
        )
            refusals.Add($"{module.Key}/{ModuleFiles.TextFile}", "The file is missing. Each folder needs one.");
        if (places.Length == 0 && refusals.None)
            refusals.Add("", $"There is no module in it. A module is a folder with a file {ModuleFiles.TextFile}.");
        return refusals.None ? (Modules(read, refusals), refusals.All) : ([], refusals.All);
    }

    private static Listed<ModuleFiles> Modules(IEnumerable<(Place Place, byte[] Bytes)> read, Refusals refusals)
    {
        var modules = read.GroupBy(file => file.Place.Module, StringComparer.Ordinal)
            .OrderBy(files => files.Key, StringComparer.Ordinal)
            .Select(files => Module(files.Key, [.. files], refusals))
            .ToArray();
        return refusals.None ? [.. modules] : [];
    }

    private static ModuleFiles Module(string name, (Place Place, byte[] Bytes)[] files, Refusals refusals)
    {
        Findings findings = new($"{name}/{ModuleFiles.TextFile}");
        var text = FileText.Of(files.Single(file => file.Place.File == ModuleFiles.TextFile).Bytes, findings);
        refusals.Add(findings);
        return new(
            name,
            text ?? "",
            files
                .Where(file => file.Place.File != ModuleFiles.TextFile)
                .ToImmutableSortedDictionary(
                    file => file.Place.File,
                    file => (ReadOnlyMemory<byte>)file.Bytes,
                    StringComparer.Ordinal
                )
        );
    }

    private static void Put(ZipArchive zip, string name, ReadOnlySpan<byte> bytes)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = Always;
        using var into = entry.Open();
        into.Write(bytes);
    }

    private static bool IsFolder(ZipArchiveEntry entry) => entry.FullName.EndsWith('/') && entry.Length == 0;

    /// <summary>Where in the parcel a file lies: in which module's folder, under which name.</summary>
    private sealed record Place(string Module, string File, ZipArchiveEntry Entry)
    {
        public static Place? Of(ZipArchiveEntry entry, Refusals refusals)
        {
            var parts = entry.FullName.Split('/');
            // A parcel of the folder itself has one folder more.
            if (parts is ["modules", _, _])
                parts = parts[1..];
            if (parts is not [var module, var file] || !Slug.Is(module) || !IsFile(file))
                refusals.Add(
                    entry.FullName,
                    $"A parcel holds folders with {ModuleFiles.TextFile} and pictures, named with {Slug.Words}, and nothing else. Take this out."
                );
            else if ((entry.ExternalAttributes >> 16 & 0xF000) == SymbolicLink)
                refusals.Add(entry.FullName, "The file is only a pointer to another place. Put the file itself there.");
            else
                return new(module, file, entry);
            return null;
        }

        /// <summary>What is in it; at most <paramref name="left"/> bytes, whatever its header says.</summary>
        public byte[] Bytes(Refusals refusals, ref int left)
        {
            var largest = Math.Min(left, File == ModuleFiles.TextFile ? ModuleText.LargestFile : ModuleFiles.LargestPicture);
            using var from = Entry.Open();
            var buffer = new byte[largest + 1];
            var length = from.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
            left -= Math.Min(left, length);
            if (length <= largest)
                return buffer[..length];
            refusals.Add($"{Module}/{File}", $"The file is too large; {largest / 1024} KB are the most here.");
            return [];
        }

        private static bool IsFile(string file) =>
            file == ModuleFiles.TextFile
            || (ModuleFiles.PictureKinds.Contains(Path.GetExtension(file)) && Slug.Is(Path.GetFileNameWithoutExtension(file)));
    }

    private sealed class Refusals
    {
        private readonly List<Finding> _all = [];

        public bool None => _all.Count == 0;

        public Listed<Finding> All => [.. _all];

        // A name from outside may hold anything and be of any length.
        public void Add(string file, string message) => _all.Add(new(Plain(file), 0, Severity.Broken, message));

        public void Add(Findings findings) => _all.AddRange(findings.InOrder());

        private static string Plain(string file) =>
            new([.. file.Take(100).Select(letter => char.IsControl(letter) || char.IsSurrogate(letter) ? '?' : letter)]);
    }
}
