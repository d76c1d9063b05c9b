using System.Net;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;
using Tickover.Web.Tanks;
using Tickover.Workshop.Tanks.Sketching;

namespace Tickover.Web.Tests.Tanks;

public sealed class SketchQueryTests
{
    private const string Box = "view=rear&x1=0&y1=0&x2=500&y2=0&x3=500&y3=250&x4=0&y4=250&depth=300";

    [Theory]
    [InlineData("s1=523,5&w1=500", "0_0~523.5_0~523.5_250~0_250")]
    [InlineData("s1=500&w1=500", "0_0~500_0~500_250~0_250")]
    [InlineData("drop=2", "0_0~500_250~0_250")]
    [InlineData("insert=4", "0_0~500_0~500_250~0_250~0_125")]
    [InlineData("act=back", "0_0~500_0~500_250")]
    [InlineData("act=clear", "")]
    [InlineData("r2=20", "0_0~500_0_20~500_250~0_250")]
    public void What_a_button_or_a_side_asks_for_stands_in_the_address(string act, string corners)
    {
        var read = Read($"{Box}&{act}");

        Assert.Empty(read.Problems);
        Assert.Equal($"/s?view=rear&corners={corners}&depth=300", WebUtility.UrlDecode(read.Address("/s")));
    }

    [Fact]
    public void The_address_says_all_of_a_sketch()
    {
        const string Whole = "/s?view=plan&corners=-10.5_0~523_0_25~523_302&depth=275.5&wall=1.2&stated=36&name=left one&ahead=-600&left=480&up=40&tap=in&snap=1";

        var read = Read(Whole[3..]);

        Assert.Equal(Whole, WebUtility.UrlDecode(read.Address("/s")));
        Assert.Equal((-600d, 480d, 40d), read.Sketch.At);
    }

    [Theory]
    [InlineData("x1=0&y1=&x2=500&y2=0", "Corner 1, up: no figure.")]
    [InlineData("x1=wide&y1=0&x2=500&y2=0", "Corner 1, right: \"wide\" is no number.")]
    [InlineData("x1=1e999&y1=0", "\"1e999\" is no number")]
    [InlineData("x1=0&y1=0&x2=500&y2=0&s1=-3&w1=500", "its length is above zero")]
    [InlineData("x1=0&y1=0&x2=500&y2=0&s1=NaN&w1=500", "is no number")]
    [InlineData("corners=0_0~500&depth=-300", "Depth: -300 is below zero.")]
    public void What_cannot_be_read_is_said(string form, string words) => Assert.Contains(Read(form).Problems, p => p.Contains(words, StringComparison.Ordinal));

    private static SketchQuery Read(string query) => SketchQuery.Read(new QueryCollection(QueryHelpers.ParseQuery(query)), new OutlineSketch());
}
