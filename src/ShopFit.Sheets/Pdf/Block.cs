namespace ShopFit.Sheets.Pdf;

/// <summary>Something that takes its height from the width it is given. Points.</summary>
internal abstract class Block
{
    /// <summary>Whether it must not stand alone at the end of a page.</summary>
    public virtual bool LeadsOn => false;

    public abstract double Height(Typesetter type, double width);

    public abstract void Draw(Sheet sheet, double x, double y, double width);

    /// <summary>What fits into a height, and what is left for the next page; nothing fits of a block that does not break.</summary>
    public virtual (Block? Fits, Block? Left) Split(Typesetter type, double width, double height) =>
        Height(type, width) <= height ? (this, null) : (null, this);
}
