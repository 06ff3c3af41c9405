@echo off
rem Runs the tool out of this repository, from whatever folder one stands in: .ci\guidegen inspect
setlocal
where dotnet >nul 2>nul || (echo guidegen: the .NET SDK 10 is missing. Get it from https://dotnet.microsoft.com/download 1>&2 & exit /b 2)
if not exist "%~dp0..\src\GuideGen\bin\Release\net10.0\guidegen.dll" echo Building the tool, a few minutes the first time, since it brings its packages. 1>&2
set "GUIDEGEN_CALL=%~0"
dotnet run --project "%~dp0..\src\GuideGen" --configuration Release --verbosity quiet -- %*
