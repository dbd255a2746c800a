using Byrelaw.Cli;

return ByrelawApp.Run(args, Doors.OfTheProcess());
