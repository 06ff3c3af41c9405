using GuideGen;

var terminal = Terminal.Of(Console.In, Console.Out, Console.Error, Console.IsOutputRedirected) with
{
    Call = ToolCall.Of(Environment.GetEnvironmentVariable(ToolCall.Variable), Environment.ProcessPath, Environment.GetCommandLineArgs()[0]),
};
return new CommandLine(terminal, Directory.GetCurrentDirectory()).Run(args);
