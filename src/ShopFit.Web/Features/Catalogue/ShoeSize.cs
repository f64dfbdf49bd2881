using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopFit.Web.Data;

namespace ShopFit.Web.Features.Catalogue;

/// <summary>One size of one model. It is an <see cref="Item"/> too, under the same key.</summary>
public sealed class ShoeSize : IShopRow
{
    private ShoeSize()
    {
    }

    /// <summary>Key of its item.</summary>
    public Guid Id { get; private set; }

    public Guid ShopId { get; private set; }

    public Guid ModelId { get; private set; }

    /// <summary>Id of the size system of its label.</summary>
    public string SizeSystem { get; private set; } = "";

    public double Size { get; private set; }

    /// <summary>The maker's word for its width; may be empty.</summary>
    public string Width { get; private set; } = "";

    /// <summary>The maker's word for any further choice, such as its box; may be empty.</summary>
    public string Option { get; private set; } = "";

    /// <summary>The maker's word for its shank; may be empty.</summary>
    public string ShankName { get; private set; } = "";

    public FormAsGiven Form { get; private set; } = new();

    /// <summary>Days from order to delivery; null where nobody knows.</summary>
    public int? LeadTimeDays { get; private set; }

    public static ShoeSize Of(Guid itemId, Guid shopId, Guid modelId, string sizeSystem, double size, string width, string option, string shankName, FormAsGiven form, int? leadTimeDays)
    {
        var shoeSize = new ShoeSize { Id = itemId, ShopId = shopId };
        shoeSize.Change(modelId, sizeSystem, size, width, option, shankName, form, leadTimeDays);
        return shoeSize;
    }

    /// <summary>Takes over what a newer catalogue says.</summary>
    public void Change(Guid modelId, string sizeSystem, double size, string width, string option, string shankName, FormAsGiven form, int? leadTimeDays)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(sizeSystem);
        ArgumentOutOfRangeException.ThrowIfNegative(leadTimeDays ?? 0);
        ModelId = modelId;
        SizeSystem = sizeSystem;
        Size = size;
        Width = width;
        Option = option;
        ShankName = shankName;
        Form = form;
        LeadTimeDays = leadTimeDays;
    }
}

internal sealed class ShoeSizeConfiguration : IEntityTypeConfiguration<ShoeSize>
{
    public void Configure(EntityTypeBuilder<ShoeSize> builder)
    {
        builder.ToTable("ShoeSizes", table => table.HasCheckConstraint("CK_ShoeSizes_LeadTime", "\"LeadTimeDays\" >= 0"));
        builder.Property(size => size.SizeSystem).HasMaxLength(20);
        builder.Property(size => size.Width).HasMaxLength(40);
        builder.Property(size => size.Option).HasMaxLength(40);
        builder.Property(size => size.ShankName).HasMaxLength(40);
        builder.ComplexProperty(size => size.Form, form => form.Property(given => given.Source).HasMaxLength(10));
        builder.HasIndex(size => new { size.ShopId, size.ModelId });
        builder.HasOne<Item>().WithOne().HasForeignKey<ShoeSize>(size => size.Id).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<ShoeModel>().WithMany().HasForeignKey(size => size.ModelId).OnDelete(DeleteBehavior.Restrict);
    }
}
