using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Witnessmark.Ledger.Tests.PowerCut;

/// <summary>
/// SQLite's own way to its files, with every write, synchronisation and deletion told to a <see cref="Disk"/> on the way. Connections use it
/// that name it: <c>Vfs=watched</c>.
/// </summary>
/// <remarks><b>Source.</b> SQLite documentation, "The SQLite OS Interface or VFS", and sqlite3.h: the layout of sqlite3_vfs (version 3) and sqlite3_io_methods (version 3).</remarks>
internal static unsafe partial class WatchedFiles
{
    public const string Name = "watched";
    private const int Ok = 0;

    private static readonly ConcurrentDictionary<nint, (string Path, nint Usual)> Files = new();

    // a database and its log have different ways, for only one of them is locked
    private static readonly ConcurrentDictionary<nint, nint> Watched = new();
    private static Vfs* usual;

    /// <summary>Who is told.</summary>
    public static Disk? Disk { get; set; }

    /// <summary>Makes it known to SQLite, once.</summary>
    public static void Register()
    {
        if (usual != null)
            return;
        usual = Find(null);
        var watched = (Vfs*)NativeMemory.Alloc((nuint)sizeof(Vfs));
        *watched = *usual;
        watched->Next = null;
        watched->Name = (byte*)Marshal.StringToCoTaskMemUTF8(Name);
        watched->Open = &Open;
        watched->Delete = &Delete;
        Assert.Equal(Ok, Register(watched, 0));
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Open(Vfs* vfs, byte* name, File* file, int flags, int* outFlags)
    {
        var path = Marshal.PtrToStringUTF8((nint)name);
        if (path is not null)
            Disk?.Opened(path, System.IO.File.Exists(path) ? System.IO.File.ReadAllBytes(path) : []);
        var said = usual->Open(usual, name, file, flags, outFlags);
        if (said != Ok || file->Methods == null || path is null)
            return said;
        Watch(file, path);
        return said;
    }

    // the file is SQLite's own and stays so; only the way to it is another
    private static void Watch(File* file, string path)
    {
        Files[(nint)file] = (path, (nint)file->Methods);
        file->Methods = (Methods*)Watched.GetOrAdd((nint)file->Methods, WatchedCopy);
    }

    private static nint WatchedCopy(nint methods)
    {
        var watched = (Methods*)NativeMemory.Alloc((nuint)sizeof(Methods));
        *watched = *(Methods*)methods;
        watched->Close = &Close;
        watched->Write = &Write;
        watched->Truncate = &Truncate;
        watched->Sync = &Sync;
        return (nint)watched;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Close(File* file)
    {
        Files.TryRemove((nint)file, out var known);
        return ((Methods*)known.Usual)->Close(file);
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Write(File* file, byte* data, int length, long offset)
    {
        var (path, methods) = Files[(nint)file];
        if (Disk?.Refuses() is { } refused and not Ok)
            return refused;
        var said = ((Methods*)methods)->Write(file, data, length, offset);
        if (said == Ok)
            Disk?.Wrote(path, offset, new ReadOnlySpan<byte>(data, length).ToArray());
        return said;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Truncate(File* file, long length)
    {
        var (path, methods) = Files[(nint)file];
        var said = ((Methods*)methods)->Truncate(file, length);
        if (said == Ok)
            Disk?.Truncated(path, length);
        return said;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Sync(File* file, int flags)
    {
        var (path, methods) = Files[(nint)file];
        if (Disk?.Refuses() is { } refused and not Ok)
            return refused;
        if (Disk is null)
            return ((Methods*)methods)->Sync(file, flags);
        Disk.Synced(path); // the disk that counts is this one: waiting for the real one would only take time
        return Ok;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static int Delete(Vfs* vfs, byte* name, int alsoFolder)
    {
        var said = usual->Delete(usual, name, alsoFolder);
        if (said == Ok)
            Disk?.Deleted(Marshal.PtrToStringUTF8((nint)name)!);
        return said;
    }

    [LibraryImport("e_sqlite3", EntryPoint = "sqlite3_vfs_find", StringMarshalling = StringMarshalling.Utf8)]
    private static partial Vfs* Find(string? name);

    [LibraryImport("e_sqlite3", EntryPoint = "sqlite3_vfs_register")]
    private static partial int Register(Vfs* vfs, int makeDefault);

    [StructLayout(LayoutKind.Sequential)]
    private struct Vfs
    {
        public int Version;
        public int FileSize;
        public int LongestPath;
        public Vfs* Next;
        public byte* Name;
        public void* AppData;
        public delegate* unmanaged[Cdecl]<Vfs*, byte*, File*, int, int*, int> Open;
        public delegate* unmanaged[Cdecl]<Vfs*, byte*, int, int> Delete;
        public Rest14 Rest;
    }

    [StructLayout(LayoutKind.Sequential)]
    private struct File
    {
        public Methods* Methods;
    }

    [StructLayout(LayoutKind.Sequential)]
    private struct Methods
    {
        public int Version;
        public delegate* unmanaged[Cdecl]<File*, int> Close;
        public void* Read;
        public delegate* unmanaged[Cdecl]<File*, byte*, int, long, int> Write;
        public delegate* unmanaged[Cdecl]<File*, long, int> Truncate;
        public delegate* unmanaged[Cdecl]<File*, int, int> Sync;
        public Rest13 Rest;
    }

    // what stays as it is: the pointers to functions that are not looked at
    [InlineArray(13)]
    private struct Rest13
    {
        public nint Function;
    }

    [InlineArray(14)]
    private struct Rest14
    {
        public nint Function;
    }
}
