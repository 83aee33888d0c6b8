using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace Alumroot.Architecture.Tests;

/// <summary>Reads from a compiled assembly which outside members its code names, and which texts it holds.</summary>
internal static class MetadataScan
{
    /// <summary>Every outside member used, as Namespace.Type.Member or, for constructors, with its count of parameters: System.Random..ctor/1.</summary>
    public static IReadOnlyList<string> MembersUsed(Assembly assembly) => Open(assembly, reader =>
        reader.MemberReferences
            .Select(handle => reader.GetMemberReference(handle))
            .Select(member => (Type: TypeName(reader, member.Parent), Member: member))
            .Where(m => m.Type is not null)
            .Select(m =>
            {
                string name = reader.GetString(m.Member.Name);
                return $"{m.Type}.{name}" + (name == ".ctor" ? "/" + ParameterCount(reader, m.Member) : "");
            })
            .Distinct().Order(StringComparer.Ordinal).ToArray());

    /// <summary>Every text written in the code.</summary>
    public static IReadOnlyList<string> Texts(Assembly assembly) => Open(assembly, reader =>
    {
        var texts = new List<string>();
        for (UserStringHandle at = MetadataTokens.UserStringHandle(1); !at.IsNil; at = reader.GetNextHandle(at))
            texts.Add(reader.GetUserString(at));
        return texts;
    });

    private static string? TypeName(MetadataReader reader, EntityHandle parent)
    {
        if (parent.Kind == HandleKind.TypeSpecification)
        {
            BlobReader blob = reader.GetBlobReader(reader.GetTypeSpecification((TypeSpecificationHandle)parent).Signature);
            if (blob.ReadSignatureTypeCode() != SignatureTypeCode.GenericTypeInstance) return null;
            blob.ReadCompressedInteger();
            parent = blob.ReadTypeHandle();
        }
        if (parent.Kind != HandleKind.TypeReference) return null;
        TypeReference type = reader.GetTypeReference((TypeReferenceHandle)parent);
        string space = reader.GetString(type.Namespace);
        return space.Length == 0 ? reader.GetString(type.Name) : $"{space}.{reader.GetString(type.Name)}";
    }

    private static int ParameterCount(MetadataReader reader, MemberReference member)
    {
        BlobReader blob = reader.GetBlobReader(member.Signature);
        blob.ReadSignatureHeader();
        return blob.ReadCompressedInteger();
    }

    private static T Open<T>(Assembly assembly, Func<MetadataReader, T> read)
    {
        using FileStream file = File.OpenRead(assembly.Location);
        using var image = new PEReader(file);
        return read(image.GetMetadataReader());
    }
}
