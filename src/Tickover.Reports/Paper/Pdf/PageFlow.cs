namespace Tickover.Reports.Paper.Pdf;

/// <summary>Puts pieces on pages: nothing cut off, nothing parted that belongs together unless no page could hold it.</summary>
internal sealed class PageFlow(double height)
{
    private readonly List<List<Placed>> _pages = [];
    private double _used;

    /// <summary>Distributes the pieces.</summary>
    /// <returns>Pages of pieces; at least one page.</returns>
    internal IReadOnlyList<IReadOnlyList<Placed>> Place(IReadOnlyList<Piece> pieces)
    {
        Begin();
        for (var i = 0; i < pieces.Count;)
        {
            var count = Bound(pieces, i);
            var whole = Height(pieces, i, count);
            var fitsOnePage = whole + HeadOf(pieces[i]) <= height;
            if (pieces[i].NewPage || (fitsOnePage && !Fits(pieces, i, count)))
            {
                Begin();
            }

            for (var end = i + count; i < end; i++)
            {
                Put(pieces[i]);
            }
        }

        return _pages;
    }

    private static int Bound(IReadOnlyList<Piece> pieces, int first)
    {
        var count = 1;
        while (pieces[first + count - 1].WithNext && first + count < pieces.Count && !pieces[first + count].NewPage)
        {
            count++;
        }

        return count;
    }

    private static double Height(IReadOnlyList<Piece> pieces, int first, int count)
    {
        var sum = pieces[first].Height;
        for (var i = first + 1; i < first + count; i++)
        {
            sum += pieces[i].Before + pieces[i].Height;
        }

        return sum;
    }

    private static double HeadOf(Piece piece) => piece.Head?.Height ?? 0;

    private bool Fits(IReadOnlyList<Piece> pieces, int first, int count)
    {
        var room = _pages[^1].Count == 0 ? HeadOf(pieces[first]) : pieces[first].Before;
        return _used + room + Height(pieces, first, count) <= height;
    }

    private void Begin()
    {
        // A page is begun once, however many things ask for it
        if (_pages.Count == 0 || _pages[^1].Count > 0)
        {
            _pages.Add([]);
        }

        _used = 0;
    }

    private void Put(Piece piece)
    {
        if (_pages[^1].Count > 0 && _used + piece.Before + piece.Height > height)
        {
            Begin();
        }

        var page = _pages[^1];
        if (page.Count == 0 && piece.Head is { } head)
        {
            page.Add(new Placed(head, 0));
            _used = head.Height;
        }

        _used += page.Count == 0 ? 0 : piece.Before;
        page.Add(new Placed(piece, _used));
        _used += piece.Height;
    }
}
