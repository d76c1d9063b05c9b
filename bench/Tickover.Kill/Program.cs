using System.Globalization;
using Tickover.Kill;

return args switch
{
    ["writer", var folder] => await Writer.RunAsync(folder),
    ["run", var folder, var kills] => Told(await KillStudy.RunAsync(folder, int.Parse(kills, CultureInfo.InvariantCulture), seed: 1)),
    _ => Usage(),
};

static int Told(KillResult result)
{
    Console.WriteLine(result.Words);
    return result.IsGood ? 0 : 1;
}

static int Usage()
{
    Console.Error.WriteLine("Tickover.Kill run FOLDER KILLS | writer FOLDER");
    return 2;
}
