using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>Drawings, photographs and square codes as pieces.</summary>
internal static class PicturePieces
{
    private const double PointsPerUnit = 0.75;
    private const double Gap = 16;

    // Two photographs side by side on A4 are 82 mm wide; upright ones are held to the same size of area
    private const double TallestPhoto = 190;
    private const double PhotoUnits = 400;

    // ISO/IEC 18004 sets no size; 26 mm reads from a hand's distance with any telephone
    private const double QrSide = 74;

    internal static IEnumerable<Piece> Of(Figure figure, BlockSetter set, double width)
    {
        var scale = Math.Min(Math.Min(width / figure.Width, PointsPerUnit), set.PageHeight * 0.85 / figure.Height);
        yield return new Piece(figure.Height * scale, (canvas, x, y) => figure.Draw(canvas.Drawing(scale, x, y))) { Before = set.Type.Space(5) };
    }

    internal static IEnumerable<Piece> Of(Photos photos, BlockSetter set, double width)
    {
        var half = (width - Gap) / 2;
        var look = set.Type.Small;
        foreach (var pair in photos.Entries.Chunk(2))
        {
            var sizes = pair.Select(p => Size(p, half)).ToList();
            var captions = pair.Select(p => set.Setter.Lines(p.Caption, look, half)).ToList();
            var tallest = sizes.Max(s => s.Height);
            yield return new Piece(tallest + 3 + captions.Max(c => c.Count) * look.Lead, (canvas, x, y) =>
            {
                for (var i = 0; i < pair.Length; i++)
                {
                    var box = new Box(x + i * (half + Gap), y, sizes[i].Width, sizes[i].Height);
                    canvas.Photo(pair[i].Jpeg, box);
                    var scale = box.Width / PhotoUnits;
                    PhotoMarks.Draw(canvas.Drawing(scale, box.Left, box.Top), pair[i].Marks, PhotoUnits, box.Height / scale);
                    canvas.Lines(captions[i], look, box.Left, y + tallest + 3);
                }
            })
            { Before = set.Type.Space(8) };
        }
    }

    internal static IEnumerable<Piece> Of(QrLink link, BlockSetter set, double width)
    {
        var modules = new QrModules(link.Address);
        var scale = QrSide / modules.Side;
        var room = width - QrSide - 10;
        var words = set.Setter.Lines(Prose.Of(link.Words), set.Type.Body, room);
        var address = set.Setter.Lines(Prose.Of(link.Address), set.Type.Small, room);
        var text = words.Count * set.Type.Body.Lead + address.Count * set.Type.Small.Lead;
        yield return new Piece(Math.Max(QrSide, text), (canvas, x, y) =>
        {
            modules.Draw(canvas.Drawing(scale, x, y));
            canvas.Lines(words, set.Type.Body, x + QrSide + 10, y);
            var top = y + words.Count * set.Type.Body.Lead;
            canvas.Lines(address, set.Type.Small, x + QrSide + 10, top);
            canvas.Link(new Box(x + QrSide + 10, top, room, address.Count * set.Type.Small.Lead), link.Address);
        })
        { Before = set.Type.Space(8) };
    }

    private static (double Width, double Height) Size(Photo photo, double width)
    {
        var (w, h) = photo.Jpeg is null ? (3, 1) : JpegSize.Read(photo.Jpeg) ?? (3, 1);
        var scale = Math.Min(width / w, TallestPhoto / h);
        return (w * scale, h * scale);
    }
}
