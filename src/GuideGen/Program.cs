using GuideGen;

return new CommandLine(Terminal.Of(Console.In, Console.Out, Console.Error, Console.IsOutputRedirected), Directory.GetCurrentDirectory()).Run(args);
