@echo off
rem Starts Longlow. Builds it on first use, or when sources are newer than what was built.
rem Needs a JDK 17 or newer, and Maven for building only. Does what the script beside it does elsewhere,
rem but for the lock that lets two first starts take turns. No path is handed to "call", which would read the
rem percent signs and carets in it once more.
setlocal DisableDelayedExpansion
set "HERE=%~dp0"
set "TARGET=%HERE%target"
set "STAMP=%TARGET%\longlow.built"
set "JAVA=java"
set "ARCHIVE=%TARGET%\longlow.jsa"
set "WINDOW_ARCHIVE=%TARGET%\longlow-window.jsa"
set "CLASSES=%TARGET%\longlow-sketcher.jar;%TARGET%\lib\*"
set "FOUND="
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if defined JAVA_HOME if exist "%JAVA%.exe" set "FOUND=1"
if not defined JAVA_HOME where java >nul 2>&1 && set "FOUND=1"
if not defined FOUND (
  echo longlow: no Java found; install a JDK 17 or newer, or set JAVA_HOME to one 1>&2
  exit /b 2
)
set "STALE="
if not exist "%STAMP%" set "STALE=1"
rem Paths go by the environment, whatever signs are in them; what is piped into a command is not for this to read.
if not defined STALE for /f %%s in ('powershell -NoProfile -Command "Set-Location -LiteralPath ($env:HERE + '..'); $built = (Get-Item -LiteralPath $env:STAMP).LastWriteTime; if (@(Get-Item pom.xml, *\pom.xml, *\guide\*.md) + @(Get-Item *\src\main | Get-ChildItem -Recurse -File) | Where-Object { $_.LastWriteTime -gt $built } | Select-Object -First 1) { 'yes' }" ^<nul') do set "STALE=1"
if not defined STALE goto start
where mvn >nul 2>&1
if errorlevel 1 (
  echo longlow: Maven is needed to build Longlow the first time; install it and try again 1>&2
  exit /b 2
)
echo longlow: building ^(the first time fetches libraries and takes a few minutes^) 1>&2
if not exist "%TARGET%" mkdir "%TARGET%"
set "LOG=%TARGET%\longlow-build.log"
pushd "%HERE%.."
call mvn -q -B -DskipTests -Dmaven.test.skip=true -Dspotless.check.skip=true -pl sketcher -am package >"%LOG%" 2>&1 <nul
set "BUILT=%ERRORLEVEL%"
popd
if not "%BUILT%"=="0" (
  echo longlow: the build failed; the end of its log: 1>&2
  powershell -NoProfile -Command "Get-Content -LiteralPath $env:LOG -Tail 20" 1>&2 <nul
  exit /b 1
)
del /f /q "%ARCHIVE%" "%WINDOW_ARCHIVE%" "%ARCHIVE%.mark" "%WINDOW_ARCHIVE%.mark" 2>nul
rem A class archive makes later starts quick; without it everything works the same, only slower.
"%JAVA%" -XX:TieredStopAtLevel=1 "-XX:ArchiveClassesAtExit=%ARCHIVE%" -Djava.awt.headless=true -cp "%CLASSES%" org.longlow.sketcher.Launcher warm-up >nul 2>&1 <nul
if not "%ERRORLEVEL%"=="0" del /f /q "%ARCHIVE%" 2>nul
set "FILE=%ARCHIVE%"
call :mark
>"%STAMP%" echo built

:start
set "OPTIONS=-Xmx512m -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -Dfile.encoding=UTF-8"
set "WINDOW="
if "%~1"=="" set "WINDOW=1"
if "%~1"=="open" set "WINDOW=1"
set "SHARED=-Xshare:auto"
set "MAKES="
if defined WINDOW goto window
set "FILE=%ARCHIVE%"
call :archived
set "OPTIONS=%OPTIONS% -XX:+UseSerialGC -Djava.awt.headless=true"
if not "%~1"=="place" if not "%~1"=="fit" set "OPTIONS=%OPTIONS% -XX:TieredStopAtLevel=1"
"%JAVA%" %OPTIONS% "%SHARED%" -cp "%CLASSES%" org.longlow.sketcher.Launcher %*
exit /b %ERRORLEVEL%

:window
rem It is painted many times a second, so it collects garbage in short breaks; commands do it with the least work.
set "OPTIONS=%OPTIONS% -XX:+UseG1GC -XX:MaxGCPauseMillis=10 -XX:NewSize=96m"
rem The window's classes cannot be loaded without a screen, so its archive is made when the first window is closed.
set "FILE=%WINDOW_ARCHIVE%"
call :archived
if not exist "%FILE%" set "MAKES=1"
if defined MAKES set "SHARED=-XX:ArchiveClassesAtExit=%FILE%"
rem The window toolkit wants to be a module; commands never load it.
set "MODULES="
pushd "%TARGET%\lib"
for %%j in (javafx-*.jar) do call :module %%j
popd
"%JAVA%" %OPTIONS% "%SHARED%" --module-path "%MODULES%" --add-modules javafx.controls -cp "%CLASSES%" org.longlow.sketcher.Launcher %*
set "CODE=%ERRORLEVEL%"
if defined MAKES if "%CODE%"=="0" call :mark
exit /b %CODE%

:module
set "MODULES=%MODULES%%TARGET%\lib\%~1;"
exit /b 0

rem From an archive that was cut short or written over Java dies, so its size and time are kept beside it once it
rem is whole. One that has not those any more, or none, is taken away.
:archived
if not exist "%FILE%" exit /b 0
set "NOW="
set "KEPT="
for %%f in ("%FILE%") do set "NOW=%%~zf %%~tf"
if exist "%FILE%.mark" set /p KEPT=<"%FILE%.mark"
if "%NOW%"=="%KEPT%" (set "SHARED=-XX:SharedArchiveFile=%FILE%") else del /f /q "%FILE%" "%FILE%.mark" 2>nul
exit /b 0

:mark
if exist "%FILE%" for %%f in ("%FILE%") do >"%FILE%.mark" echo %%~zf %%~tf
exit /b 0
