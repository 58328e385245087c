@echo off
rem Starts Longlow. Builds it on first use, or when sources are newer than what was built.
rem Needs a JDK 17 or newer, and Maven for building only. Does what the script beside it does elsewhere,
rem but for the lock that lets two first starts take turns.
setlocal
set "HERE=%~dp0"
set "TARGET=%HERE%target"
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
if not exist "%TARGET%\longlow.built" set "STALE=1"
if not defined STALE for /f %%s in ('powershell -NoProfile -Command "$t=(Get-Item '%TARGET%\longlow.built').LastWriteTime; if (Get-ChildItem '%HERE%..' -Recurse -File ^| Where-Object { $_.FullName -notmatch '\\(target^|\.git)\\' -and ($_.FullName -match '\\src\\main\\' -or $_.Name -eq 'pom.xml') -and $_.LastWriteTime -gt $t } ^| Select-Object -First 1) { 'yes' }"') do set "STALE=1"
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
call mvn -q -B -DskipTests -Dmaven.test.skip=true -Dspotless.check.skip=true -pl sketcher -am package >"%LOG%" 2>&1
set "BUILT=%ERRORLEVEL%"
popd
if not "%BUILT%"=="0" (
  echo longlow: the build failed; the end of its log: 1>&2
  powershell -NoProfile -Command "Get-Content '%LOG%' -Tail 20" 1>&2
  exit /b 1
)
del /f /q "%ARCHIVE%" "%WINDOW_ARCHIVE%" "%ARCHIVE%.mark" "%WINDOW_ARCHIVE%.mark" 2>nul
rem A class archive makes later starts quick; without it everything works the same, only slower.
"%JAVA%" "-XX:ArchiveClassesAtExit=%ARCHIVE%" -Djava.awt.headless=true -cp "%CLASSES%" org.longlow.sketcher.Launcher warm-up >nul 2>&1
if errorlevel 1 (del /f /q "%ARCHIVE%" 2>nul) else call :mark "%ARCHIVE%"
>"%TARGET%\longlow.built" echo built

:start
set "OPTIONS=-Xmx512m -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -Dfile.encoding=UTF-8"
set "WINDOW="
if "%~1"=="" set "WINDOW=1"
if "%~1"=="open" set "WINDOW=1"
set "SHARED=-Xshare:auto"
set "MAKES="
if not defined WINDOW (
  call :archived "%ARCHIVE%"
  set "OPTIONS=%OPTIONS% -XX:+UseSerialGC -Djava.awt.headless=true"
)
if not defined WINDOW if not "%~1"=="place" if not "%~1"=="fit" set "OPTIONS=%OPTIONS% -XX:TieredStopAtLevel=1"
if not defined WINDOW goto run
rem It is painted many times a second, so it collects garbage in short breaks; commands do it with the least work.
set "OPTIONS=%OPTIONS% -XX:+UseG1GC -XX:MaxGCPauseMillis=10"
rem The window's classes cannot be loaded without a screen, so its archive is made when the first window is closed.
call :archived "%WINDOW_ARCHIVE%"
if not exist "%WINDOW_ARCHIVE%" (
  set "MAKES=1"
  set "SHARED=-XX:ArchiveClassesAtExit=%WINDOW_ARCHIVE%"
)
rem The window toolkit wants to be a module; commands never load it.
set "MODULES="
for %%j in ("%TARGET%\lib\javafx-*.jar") do call set "MODULES=%%MODULES%%%%~j;"
"%JAVA%" %OPTIONS% "%SHARED%" --module-path "%MODULES%" --add-modules javafx.controls -cp "%CLASSES%" org.longlow.sketcher.Launcher %*
set "CODE=%ERRORLEVEL%"
if defined MAKES if "%CODE%"=="0" if exist "%WINDOW_ARCHIVE%" call :mark "%WINDOW_ARCHIVE%"
exit /b %CODE%

:run
"%JAVA%" %OPTIONS% "%SHARED%" -cp "%CLASSES%" org.longlow.sketcher.Launcher %*
exit /b %ERRORLEVEL%

rem From an archive that was cut short or written over Java dies, so its size and time are kept beside it once it
rem is whole. One that has not those any more, or none, is taken away.
:archived
if not exist "%~1" exit /b 0
set "NOW=%~z1 %~t1"
set "KEPT="
if exist "%~1.mark" set /p KEPT=<"%~1.mark"
if "%NOW%"=="%KEPT%" (
  set "SHARED=-XX:SharedArchiveFile=%~1"
) else (
  del /f /q "%~1" "%~1.mark" 2>nul
)
exit /b 0

:mark
>"%~1.mark" echo %~z1 %~t1
exit /b 0
