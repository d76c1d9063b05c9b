using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;

namespace Tickover.Web.Tests.Api;

public sealed class ApiTests
{
    [Fact]
    public async Task Cars_are_listed_with_the_faults_of_those_that_cannot_be_read()
    {
        await using var app = await TestApp.StartAsync("gannet-1500", "faulty");

        var cars = await app.Client.GetFromJsonAsync<JsonElement>("/api/cars");

        Assert.Equal(2, cars.GetArrayLength());
        Assert.Equal("faulty", cars[0].GetProperty("id").GetString());
        Assert.True(cars[0].GetProperty("faults").GetArrayLength() > 5);
        Assert.Equal("Samphire Gannet 1500", cars[1].GetProperty("name").GetString());
    }

    [Fact]
    public async Task A_map_has_a_point_for_every_speed_and_opening()
    {
        await using var app = await TestApp.StartAsync("gannet-1500");

        var map = await app.Client.GetFromJsonAsync<JsonElement>("/api/cars/gannet-1500/mixture?barrel=2");

        Assert.Equal(2, map.GetProperty("barrel").GetInt32());
        Assert.Equal(map.GetProperty("speedsRpm").GetArrayLength(), map.GetProperty("points").GetArrayLength());
        Assert.All(map.GetProperty("points").EnumerateArray(), row => Assert.Equal(map.GetProperty("throttleDegrees").GetArrayLength(), row.GetArrayLength()));
    }

    [Fact]
    public async Task A_point_is_explained_step_by_step()
    {
        await using var app = await TestApp.StartAsync("gannet-1500");

        var working = await app.Client.GetFromJsonAsync<JsonElement>("/api/cars/gannet-1500/explain?rpm=2750&throttle=11");

        Assert.Equal(2750, working.GetProperty("speedRpm").GetDouble());
        Assert.NotEmpty(working.GetProperty("steps").EnumerateArray());
    }

    [Fact]
    public async Task A_trial_gives_both_maps()
    {
        await using var app = await TestApp.StartAsync("gannet-1500");

        using var answer = await app.Client.PostAsJsonAsync(
            "/api/cars/gannet-1500/trial?rpm=2750&throttle=11", new { changes = new[] { new { part = "idleJet", value = "55" } } });
        var trial = await answer.Content.ReadFromJsonAsync<JsonElement>();

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.True(trial.GetProperty("fitted").GetProperty("points").GetArrayLength() > 0);
        Assert.True(trial.GetProperty("trial").GetProperty("points").GetArrayLength() > 0);
    }

    [Theory]
    [InlineData("/api/cars/none", 404)]
    [InlineData("/api/cars/gannet-1500/mixture?barrel=9", 400)]
    [InlineData("/api/cars/gannet-1500/explain?rpm=0&throttle=-5", 400)]
    [InlineData("/api/cars/faulty/mixture", 422)]
    [InlineData("/api/nothing", 404)]
    public async Task What_cannot_be_done_is_answered_with_problem_details(string address, int status)
    {
        await using var app = await TestApp.StartAsync("gannet-1500", "faulty");

        using var answer = await app.GetAsync(address);
        var problem = await answer.Content.ReadFromJsonAsync<JsonElement>();

        Assert.Equal(status, (int)answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        Assert.NotEmpty(problem.GetProperty("title").GetString()!);
        Assert.False(problem.TryGetProperty("exception", out _));
    }

    [Theory]
    [InlineData("{ not json", "application/json", 400)]
    [InlineData("{}", "application/json", 422)]
    [InlineData("{\"changes\":null}", "application/json", 422)]
    [InlineData("{\"changes\":[{\"part\":\"idleJet\",\"value\":\"huge\"}]}", "application/json", 422)]
    [InlineData("{\"changes\":[{\"part\":\"../..\",\"value\":\"1\"}]}", "application/json", 422)]
    [InlineData("{\"changes\":[{}]}", "application/json", 400, 422)]
    [InlineData("part=idleJet", "application/x-www-form-urlencoded", 415)]
    public async Task A_bad_trial_is_a_clear_no(string body, string type, params int[] expected)
    {
        await using var app = await TestApp.StartAsync("gannet-1500");
        using var content = new StringContent(body, Encoding.UTF8, type);

        using var answer = await app.Client.PostAsync("/api/cars/gannet-1500/trial", content);

        Assert.Contains((int)answer.StatusCode, expected);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
    }
}
