@echo off
rem Starts Longlow. Builds it on first use. Needs a JDK 17 or newer, and Maven for building only.
setlocal
set "HERE=%~dp0"
set "TARGET=%HERE%target"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
set "STALE="
if not exist "%TARGET%\longlow.built" set "STALE=1"
if not defined STALE for /f %%s in ('powershell -NoProfile -Command "$t=(Get-Item '%TARGET%\longlow.built').LastWriteTime; if (Get-ChildItem '%HERE%..' -Recurse -File ^| Where-Object { $_.FullName -notmatch '\\(target^|\.git)\\' -and ($_.FullName -match '\\src\\main\\' -or $_.Name -eq 'pom.xml') -and $_.LastWriteTime -gt $t } ^| Select-Object -First 1) { 'yes' }"') do set "STALE=1"
if defined STALE (
  echo longlow: building ^(the first time fetches libraries and takes a few minutes^) 1>&2
  pushd "%HERE%.."
  call mvn -q -B -Dmaven.test.skip=true -Dspotless.check.skip=true -pl sketcher -am package
  if errorlevel 1 (
    popd
    echo longlow: the build failed 1>&2
    exit /b 1
  )
  popd
  echo built> "%TARGET%\longlow.built"
)
"%JAVA%" -Xmx512m -XX:+UseSerialGC -Dfile.encoding=UTF-8 -cp "%TARGET%\longlow-sketcher.jar;%TARGET%\lib\*" org.longlow.sketcher.Launcher %*
exit /b %ERRORLEVEL%
