@echo off
rem Straddle plans group satellite roves.
rem   straddle          opens the window
rem   straddle EVENT    opens the window with the event in that folder
rem   straddle ARGS     runs the command line tool (straddle --help)
rem
rem STRADDLE_JAVA, STRADDLE_JAVA_OPTIONS, STRADDLE_CACHE, STRADDLE_STATE: as in the manual.
setlocal EnableExtensions DisableDelayedExpansion
set "HERE=%~dp0"
if not exist "%HERE%build" (
    echo straddle: This folder is not complete; unpack Straddle again. 1>&2
    exit /b 2
)
set /p BUILD=<"%HERE%build"
if not defined STRADDLE_CACHE set "STRADDLE_CACHE=%LOCALAPPDATA%\Straddle\cache"
if not defined STRADDLE_STATE set "STRADDLE_STATE=%LOCALAPPDATA%\Straddle\state"

set "JAVA="
set "EVENT="
set "NATIVES="
if defined STRADDLE_JAVA (
    call :try "%STRADDLE_JAVA%"
    if not defined JAVA (
        echo straddle: STRADDLE_JAVA names no Java 17 or newer. 1>&2
        exit /b 2
    )
)
if not defined JAVA if defined JAVA_HOME call :try "%JAVA_HOME%\bin\java.exe"
if not defined JAVA for %%J in (java.exe) do call :try "%%~$PATH:J"
if not defined JAVA for /d %%V in ("%ProgramFiles%\*") do for /d %%J in ("%%~V\jdk*" "%%~V\jre*") do call :try "%%~J\bin\java.exe"
if not defined JAVA (
    echo straddle: No Java 17 or newer was found. Install one, for example: winget install EclipseAdoptium.Temurin.21.JRE 1>&2
    exit /b 2
)

for /d %%F in ("%HERE%plugins\com.google.ortools.*") do for /d %%D in ("%%~F\ortools-*") do set "NATIVES=%%~D"
set "COMMON=-XX:+UseSerialGC -Xmx1500m -Xlog:disable -Xlog:all=error:stderr"

if "%~1"=="" goto window
if not "%~2"=="" goto command
if exist "%~1\event.straddle" (
    set "EVENT=%~f1"
    goto window
)
if /i "%~nx1"=="event.straddle" if exist "%~1" (
    set "EVENT=%~dp1."
    goto window
)
goto command

:window
rem javaw has no console of its own; it stands beside java.
set "JAVAW=%JAVA:~0,-4%w.exe"
if not exist "%JAVAW%" set "JAVAW=%JAVA%"
for %%L in ("%HERE%plugins\org.eclipse.equinox.launcher_*.jar") do set "LAUNCHER=%%~fL"
if defined EVENT set EVENT="%EVENT%"
rem Little runs for long while the window opens; the planner's code still gets the full compiler, a moment later.
set "COMPILER=-XX:Tier4InvocationThreshold=100000 -XX:Tier4MinInvocationThreshold=50000 -XX:Tier4CompileThreshold=200000 -XX:Tier4BackEdgeThreshold=400000"
start "Straddle" "%JAVAW%" %COMMON% %COMPILER% %STRADDLE_JAVA_OPTIONS% "-Djava.library.path=%NATIVES%" "-Djava.util.logging.config.file=%HERE%logging.properties" "-Dstraddle.state=%STRADDLE_STATE%" -jar "%LAUNCHER%" -install "%HERE%." -configuration "%STRADDLE_CACHE%\%BUILD%\configuration" -data "%STRADDLE_STATE%\workspace" -nosplash -application org.straddle.ui.application %EVENT%
exit /b 0

:command
rem Planning runs for long and gains by the full compiler; everything else ends before that pays, and one thread of the
rem first compiler leaves the other processor to the command.
set "COMPILER=-XX:TieredStopAtLevel=1 -XX:CICompilerCount=1"
if /i "%~1"=="plan" set "COMPILER="
"%JAVA%" %COMMON% %COMPILER% %STRADDLE_JAVA_OPTIONS% "-Djava.library.path=%NATIVES%" "-Djava.util.logging.config.file=%HERE%logging.properties" "-Dstraddle.state=%STRADDLE_STATE%" -cp "%HERE%straddle.jar" org.straddle.cli.Main %*
exit /b %ERRORLEVEL%

rem :try JAVA.EXE sets JAVA when it is a Java 17 or newer, by the file "release" beside it, else by what it says itself.
:try
if defined JAVA exit /b 0
if "%~1"=="" exit /b 0
if not exist "%~1" exit /b 0
set "MAJOR="
if exist "%~dp1..\release" (
    for /f "usebackq tokens=1,2 delims==" %%A in ("%~dp1..\release") do if "%%A"=="JAVA_VERSION" call :major "%%~B"
) else (
    "%~1" -version 2>"%TEMP%\straddle-java-version.txt"
    for /f "usebackq tokens=2,3" %%A in ("%TEMP%\straddle-java-version.txt") do if "%%A"=="version" call :major "%%~B"
    del "%TEMP%\straddle-java-version.txt"
)
if not defined MAJOR exit /b 0
if %MAJOR% GEQ 17 set "JAVA=%~f1"
exit /b 0

:major
for /f "delims=.-+_ tokens=1" %%M in ("%~1") do set "MAJOR=%%M"
exit /b 0
